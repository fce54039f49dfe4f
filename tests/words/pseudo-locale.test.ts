import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createApp } from '../../src/app'
import type { Answers } from '../../src/intake/answers'
import { script } from '../../src/intake/script'
import { type FileDb, openFileDb } from '../../src/store/file'
import { migrate } from '../../src/store/migrate'
import { openPhotoFolder } from '../../src/store/photo-folder'
import { english } from '../../src/words/en'
import { anyAnswer } from '../corpus/levels'
import { draws } from '../corpus/random'
import { walk } from '../corpus/walk'

const NOW = Date.UTC(2026, 5, 1, 9, 0)
const OWNER = 'o'.repeat(43)

/** The same keys with every sentence in brackets: what stands outside them is not from the catalogue. */
const pseudo = Object.fromEntries(Object.entries(english).map(([key, text]) => [key, `⟦${text}⟧`]))

/** Text that people typed or the program counts; everything else must come from the catalogue. */
const DATA = [
  'EUR',
  'Ines Example',
  'ines@example.test',
  'The left door, please.',
  '1M8GDM9AXKP042788',
  'Your studio',
  'Ada',
  'Ben',
]

const outside = (html: string): readonly string[] => {
  const text = html
    .replace(/<(script|style|textarea|svg)\b[\s\S]*?<\/\1>/g, ' ')
    .replace(/<[^>]+>/g, '\u0001')
    .replace(/&[a-z#0-9]+;/g, ' ')
  let bare = text
  for (let before = ''; before !== bare; ) {
    before = bare
    bare = bare.replace(/⟦[^⟦⟧]*⟧/g, ' ')
  }
  for (const typed of DATA) bare = bare.replaceAll(typed, ' ')
  return (
    bare
      .split('\u0001')
      .map((part) => part.trim())
      .filter((part) => /\p{L}{2,}/u.test(part))
      // References, keys in links, currency and unit signs, and ids are data too.
      .filter((part) => !/^[A-Z0-9]{3}-[A-Z0-9]{3}\b/.test(part) && !/^https?:\/\//.test(part))
  )
}

describe('a pseudo-locale', () => {
  let folder = ''
  let db: FileDb
  let app: ReturnType<typeof createApp>
  let n = 0

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'pseudo-'))
    db = await openFileDb(join(folder, 'jambside.db'))
    await migrate(db, NOW)
    app = createApp({
      config: {
        host: '',
        port: 0,
        dataDir: folder,
        libsqlUrl: null,
        libsqlToken: null,
        ownerKey: OWNER,
        publicOrigin: null,
        trustProxy: false,
      },
      openDb: () => ({ ...db, close: async () => {} }),
      photos: openPhotoFolder(join(folder, 'photos')),
      now: () => NOW + n * 60_000,
      random: (bytes) => {
        n += 1
        return new Uint8Array(bytes).map((_, i) => (n * 7 + i * 13) % 256)
      },
      catalogues: [pseudo],
      manifest: {
        'docket.css': 'docket.css',
        'enhance.js': 'enhance.js',
        'bench.js': 'bench.js',
        'leave.js': 'leave.js',
        'bench-worker.js': 'bench-worker.js',
      },
      log: () => {},
      fault: (_id, error) => {
        throw error
      },
    })
  })
  afterAll(async () => {
    await db.close()
    rmSync(folder, { recursive: true, force: true })
  })

  const call = async (
    method: string,
    path: string,
    key: string,
    body?: unknown,
    match?: number,
  ) => {
    const response = await app.request(`http://studio.test${path}`, {
      method,
      headers: {
        authorization: `Bearer ${key}`,
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...(match === undefined ? {} : { 'if-match': `"${match}"` }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    })
    const text = await response.text()
    expect(response.status, `${method} ${path}: ${text.slice(0, 300)}`).toBeLessThan(500)
    return text
  }
  const json = async (...args: Parameters<typeof call>) => JSON.parse(await call(...args))
  const page = async (path: string, key: string): Promise<void> => {
    expect(outside(await call('GET', path, key)), path).toEqual([])
  }

  it('shows no sentence from outside the catalogue on any page', async () => {
    const draw = draws(11)
    const met = new Set<string>()
    const walks = Array.from({ length: 60 }, () => walk(script, (q) => anyAnswer(q, draw)))
    // The three that between them meet most questions.
    const rich = [0, 1, 2].map(() => {
      const fresh = (a: Answers) => Object.keys(a).filter((id) => !met.has(id)).length
      const [best = {}] = walks.sort((a, b) => fresh(b) - fresh(a))
      for (const id of Object.keys(best)) met.add(id)
      return best
    })
    for (const answers of rich) {
      const opened = await json('POST', '/api/v1/enquiries', '', {})
      const { id, key } = opened
      let question = opened.question
      await page(`/e/${id}`, key)
      while (question !== null) {
        const answer = answers?.[question.id] ?? {
          value: question.kind === 'text' ? null : undefined,
        }
        const given =
          question.kind === 'photos'
            ? { value: null }
            : question.kind === 'contact'
              ? { value: { name: 'Ines Example', email: 'ines@example.test' } }
              : 'value' in answer && answer.value === undefined
                ? { unsure: true }
                : answer
        const next = await json('PUT', `/api/v1/enquiries/${id}/answers/${question.id}`, key, given)
        expect(next.question?.id ?? null, JSON.stringify(next).slice(0, 300)).not.toBe(question.id)
        question = next.question
        await page(`/e/${id}`, key)
      }
      await page(`/e/${id}/range`, key)
      await json('POST', `/api/v1/enquiries/${id}/submission`, key, { consent: true })
      for (const path of ['range', 'sent', 'data']) await page(`/e/${id}/${path}`, key)
      await page(`/studio/d/${id}`, OWNER)
      const { rev } = await json('GET', `/api/v1/dockets/${id}`, OWNER)
      const made = await json('POST', `/api/v1/dockets/${id}/revisions`, OWNER, {}, rev)
      await json('POST', `/api/v1/dockets/${id}/revisions/1/sending`, OWNER, {}, made.rev)
      await page(`/e/${id}/quote`, key)
      const { decide } = await json('GET', `/api/v1/enquiries/${id}/quote`, key)
      const said = await json('POST', `/api/v1/enquiries/${id}/quote/decision`, key, {
        decision: 'accept',
        revision: 1,
        name: 'Ines Example',
        acknowledged: decide.map((d: { id: string }) => d.id),
      })
      await page(`/e/${id}/quote`, key)
      await json('POST', `/api/v1/dockets/${id}/date`, OWNER, { start: '2026-07-01' }, said.rev)
      for (const path of [`/bench/${id}`, `/bench/${id}/handover`, `/studio/d/${id}`])
        await page(path, OWNER)
    }
    for (const path of ['/studio', '/studio?turn=bay', '/studio/settings', '/studio/devices'])
      await page(path, OWNER)
    await page('/', '')
    await page('/studio/sign-in', '')
  })

  it('shows none on the ways through the intake that go wrong or aside', {
    timeout: 120_000,
  }, async () => {
    const form = async (path: string, fields: string, cookie: string) => {
      const response = await app.request(`http://studio.test${path}`, {
        method: 'POST',
        headers: {
          'content-type': 'application/x-www-form-urlencoded',
          'sec-fetch-site': 'same-origin',
          ...(cookie ? { cookie } : {}),
        },
        body: fields,
      })
      return {
        status: response.status,
        html: await response.text(),
        cookie: response.headers.get('set-cookie')?.split(';')[0] ?? cookie,
        to: response.headers.get('location') ?? '',
      }
    }
    const clean = (html: string, what: string) => expect(outside(html), what).toEqual([])
    const get = async (path: string, cookie: string) => {
      const response = await app.request(`http://studio.test${path}`, {
        headers: { cookie, accept: 'text/html' },
      })
      return response.text()
    }
    // A start that brings answers along, right ones and wrong ones.
    clean(await get('/?body=saloon&year=1974&size=enormous&what=x', ''), 'start with answers')
    const { to, cookie } = await form('/e', '', '')
    const id = to.split('/')[2] ?? ''
    const refused: readonly (readonly [string, string])[] = [
      ['body', ''],
      ['body', 'value=spaceship'],
      ['year', 'value=3000'],
      ['year', 'value=soon'],
      ['deadline', 'value=31.02.2026'],
      ['contact', 'name=&email=x&phone=1'],
    ]
    await form(`/e/${id}/answers/dangers`, 'value%5B%5D=film', cookie)
    for (const [question, fields] of refused) {
      const shown = await form(`/e/${id}/answers/${question}`, fields, cookie)
      expect([question, fields, shown.status]).toEqual([question, fields, 422])
      clean(shown.html, `${question} ${fields}`)
    }
    // Every question as it is asked, with its hints, whatever the road to it.
    const answers: Record<string, unknown> = {
      body: 'saloon',
      size: 'mid',
      year: 1974,
      services: ['paint', 'stickers', 'wheels-off'],
    }
    for (const [question, value] of Object.entries(answers)) {
      const fields = Array.isArray(value)
        ? value.map((v) => `value%5B%5D=${v}`).join('&')
        : `value=${value}`
      await form(`/e/${id}/answers/${question}`, fields, cookie)
      clean(await get(`/e/${id}/q/${question}`, cookie), `changing ${question}`)
    }
    // An answer changed so that others are set aside.
    await form(`/e/${id}/answers/wish`, 'value=show', cookie)
    await form(`/e/${id}/answers/services`, 'value%5B%5D=cabin', cookie)
    const aside = await get(`/e/${id}`, cookie)
    expect(aside).toContain('set-aside')
    clean(aside, 'set aside')
    clean(await get(`/e/${id}/leave`, cookie), 'leave')
    const made = await form(`/e/${id}/link`, '', cookie)
    clean(made.html, 'link made')
    const link = /\/l\/[\w-]+\/[\w-]+/.exec(made.html)?.[0] ?? ''
    clean(await get(link, ''), 'private link')
    clean((await form(`/l/${id}/${'x'.repeat(43)}`, '', '')).html, 'a link that opens nothing')
    clean(await get(`/e/${id}`, ''), 'a docket of somebody else')
    clean((await form(`/e/${id}/answers/no-such-question`, 'value=1', cookie)).html, 'no question')
    clean((await form(`/e/${id}/answers/mould-area`, 'value=coin', cookie)).html, 'not asked now')
    clean((await form(`/e/${id}/submission`, '', cookie)).html, 'sent without consent')
  })
})
