import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { english } from '../../words/en'
import { words } from '../../words/render'
import { noteWords, sheetWords, wordsTag } from './sheet-words'

const all = words([english], { language: 'en', locale: 'en-GB', currency: 'EUR', exponent: 2 })
const root = new URL('../../', import.meta.url)

/** The first part of every key the sheet's own files name; a note's sentences come with its sheet. */
const named = (): readonly string[] => {
  const files = ['pages/bench', 'pages/parts', 'client/bench'].flatMap((folder) =>
    readdirSync(new URL(folder, root))
      .filter((name) => /\.tsx?$/.test(name) && !name.includes('.test.'))
      .map((name) => readFileSync(new URL(`${folder}/${name}`, root), 'utf8')),
  )
  const keys = files.flatMap((text) => [...text.matchAll(/[`'"]([a-z][a-z-]+)\.(?=[a-z$])/g)])
  const heads = new Set(Object.keys(english).map((key) => key.split('.')[0]))
  return [...new Set(keys.map((m) => m[1] ?? ''))].filter((head) => heads.has(head))
}

/** Brought with the sheet, in part, said in the office only, and the name of a file. */
const OTHERWISE = ['risk', 'q', 'reason', 'photo']

it('takes along every sentence of the kinds its parts and their answers name', () => {
  const { catalogue } = sheetWords(all)
  const found = named()
  expect(found.length).toBeGreaterThan(10)
  const lacking = found
    .filter((head) => !OTHERWISE.includes(head))
    .filter((head) =>
      Object.keys(english).some((k) => k.startsWith(`${head}.`) && !(k in catalogue)),
    )
  expect(lacking).toEqual([])
  // What paint, faults and lines are called by the domain, which names no sentence itself.
  for (const key of ['paint.why.fits', 'error.ERR_NUMBER', 'verdict.stop', 'q.year.prompt'])
    expect([key, key in catalogue]).toEqual([key, true])
})

it('leaves out what no sheet says, and brings a note with the sheet that has it', () => {
  const { catalogue } = sheetWords(all)
  for (const key of ['q.body.o.saloon', 'risk.matte'])
    expect([key, key in english]).toEqual([key, true])
  expect('q.body.o.saloon' in catalogue || 'risk.matte' in catalogue).toBe(false)
  expect(Object.keys(noteWords(all, [{ id: 'matte' }]))).toContain('risk.matte.bench')
})

it('has another name when a sentence or the way of writing figures is another', () => {
  const given = sheetWords(all)
  const other = words([{ 'page.unsent': '{n} waiting' }, english], all.formats)
  const dollars = words([english], { ...all.formats, currency: 'USD' })
  const tags = [given, sheetWords(other), sheetWords(dollars)].map(wordsTag)
  expect(new Set(tags).size).toBe(3)
  expect(wordsTag(sheetWords(all))).toBe(tags[0])
})
