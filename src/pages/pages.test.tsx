import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { MARKS, PROBES } from '../docket/kinds'
import { STATES, TURNS } from '../docket/states'
import { KIT } from '../quote/context'
import { bodyStyles, panelsOf } from '../quote/panels'
import { SEVERITIES, TRACKS } from '../quote/rules'
import { pages } from '../words/en/pages'
import { panels } from '../words/en/panels'
import { plainAssets } from './assets'
import { PROBLEM_KINDS } from './problem-page'
import { DAY_STATES } from './quote/day-page'
import { samplePages } from './samples'
import { SETTING_FIELDS } from './studio/setting-fields'
import { toHtml } from './to-html'

const HOSTILE =
  '</textarea><script>alert(1)</script>"\' onload=x javascript:alert(1) \u202e\u{1f697}'
const plain = Object.entries(samplePages(plainAssets))
const hostile = Object.entries(samplePages(plainAssets, { name: HOSTILE, text: HOSTILE }))

/** Markup with every attribute's value emptied, so that only names are looked at. */
const bare = (html: string): string => html.replace(/"[^"]*"/g, '""')

describe.each(plain)('page %s', (_name, page) => {
  const html = toHtml(page)
  it('is a whole document with one main, one first heading and a skip link', () => {
    expect(html.startsWith('<!doctype html><html lang="en"')).toBe(true)
    expect(html.match(/<main /g)).toHaveLength(1)
    expect(html.match(/<h1[ >]/g)).toHaveLength(1)
    expect(html).toContain('href="#main"')
  })
  it('holds nothing inline and fetches nothing from elsewhere', () => {
    expect(bare(html)).not.toMatch(/<[^>]*\s(?:style|on[a-z]+)=/)
    expect(html).not.toMatch(/<script(?! type="module" src="\/)/)
    expect(html).not.toMatch(/(?:src|href)="(?:https?:)?\/\//)
  })
  it('uses every id once and labels every control', () => {
    const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1])
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([])
    const controls = [...html.matchAll(/<(?:input|textarea|select)\b[^>]*>/g)].map((m) => m[0])
    const unlabelled = controls.filter((tag) => {
      if (/type="(?:hidden|radio|checkbox)"/.test(tag) || /aria-label/.test(tag)) return false
      const id = /\sid="([^"]+)"/.exec(tag)?.[1]
      return id === undefined || !html.includes(`for="${id}"`)
    })
    expect(unlabelled).toEqual([])
  })
  it('leads every fault and described-by to something on the page', () => {
    const refs = [...html.matchAll(/(?:aria-describedby|aria-labelledby)="([^"]+)"/g)]
      .flatMap((m) => (m[1] ?? '').split(' '))
      .concat(
        [...html.matchAll(/class="faults"[\s\S]*?<\/ul>/g)].flatMap((m) =>
          [...m[0].matchAll(/href="#([^"]+)"/g)].map((h) => h[1] ?? ''),
        ),
      )
    expect(refs.filter((id) => !html.includes(`id="${id}"`))).toEqual([])
  })
})

describe.each(hostile)('page %s with hostile words', (_name, page) => {
  const html = toHtml(page)
  it('shows them as text, never as markup or as a link', () => {
    expect(html).not.toContain('<script>alert')
    expect(bare(html)).not.toMatch(/<[^>]*\son[a-z]+=/)
    expect(html).not.toMatch(/(?:href|src|action|formaction)="javascript:/i)
    expect(html.match(/<main /g)).toHaveLength(1)
    expect(html.match(/<textarea/g)?.length).toBe(html.match(/<\/textarea>/g)?.length)
  })
})

it('hostile words really stand on the pages', () => {
  const shown = hostile.filter(([, page]) => toHtml(page).includes('&lt;script&gt;alert(1)'))
  expect(shown.length).toBeGreaterThan(25)
})

describe('the words of the pages', () => {
  const folder = new URL('.', import.meta.url).pathname
  const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((f) => /\.tsx?$/.test(f) && !/test|sample/.test(f))
    .map((f) => readFileSync(join(folder, f), 'utf8'))
  const written = [
    ...new Set(sources.flatMap((s) => s.match(/(?<=')page\.[a-zA-Z0-9.-]+(?=')/g) ?? [])),
  ]
  const derived = [
    ...STATES.map((v) => `page.state.${v}`),
    ...STATES.map((v) => `page.mine.${v}`),
    ...TURNS.flatMap((v) => [`page.turn.${v}`, `page.list.none.${v}`]),
    ...SEVERITIES.map((v) => `page.severity.${v}`),
    ...TRACKS.map((v) => `page.track.${v}`),
    ...KIT.map((v) => `page.kit.${v}`),
    ...PROBES.map((v) => `page.probe.${v}`),
    ...MARKS.map((v) => `page.by.${v}`),
    ...PROBLEM_KINDS.flatMap((v) => [`page.problem.${v}`, `page.problem.${v}.do`]),
    ...['yes', 'tight', 'no'].map((v) => `page.range.deadline.${v}`),
    ...['waiting', 'begun', 'broken-off', 'done'].map((v) => `page.step.${v}`),
    ...['dwell', 'dry', 'cure', 'answer'].map((v) => `page.step.lag.${v}`),
    ...['yes', 'leak', 'dry', 'part'].map((v) => `page.held.${v}`),
    ...['open', 'done', 'waived'].map((v) => `page.check.${v}`),
    ...['agree', 'refuse', 'within', 'waiting'].map((v) => `page.extra.${v}`),
    ...['refused-extra', 'not-done', 'turned-down'].map((v) => `page.record.left.${v}`),
    ...['public', 'customer', 'bench', 'owner'].map((v) => `page.rights.${v}`),
    ...['enquiry', 'quote', 'record', 'studio', 'bench'].map((v) => `page.link.${v}`),
    ...['customer', 'studio'].map((v) => `page.talk.${v}`),
    ...['yes', 'no'].map((v) => `page.told.${v}`),
    ...DAY_STATES.flatMap((v) => [`page.day.${v}`, `page.day.${v}.do`]),
    ...['owner', 'bench'].map((v) => `page.devices.${v}`),
    ...[0, 1, 2, 3, 4, 5, 6].map((v) => `page.weekday.${v}`),
    ...SETTING_FIELDS.flatMap(({ section, fields }) => [
      `page.settings.${section}`,
      ...fields.flatMap((f) => [
        `page.setting.${f.name}`,
        ...(f.kind === 'choice' ? f.values.map((v) => `page.setting.${f.name}.${v}`) : []),
      ]),
    ]),
  ]
  it('finds the keys the components use', () => {
    expect(written.length).toBeGreaterThan(300)
  })
  it.each([...written, ...derived])('%s has words', (key) => {
    expect(pages[key]).toEqual(expect.any(String))
  })
  it('every panel of every body has a name', () => {
    const ids = new Set(bodyStyles.flatMap((b) => panelsOf(b).flatMap((p) => [p.id, p.place])))
    expect([...ids].filter((id) => panels[`panel.${id}`] === undefined)).toEqual([])
  })
})
