import { copyFileSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { fillDemo } from '../../dev/demo/fill-demo'
import { paths } from '../../src/pages/paths'
import { dataPaths } from '../../src/store/data-dir'
import { openFileDb } from '../../src/store/file'
import { appOn, OWNER_KEY } from '../bench/http/app-on'
import { timedAsync } from '../bench/timed'
import { multiply } from './multiply'
import type { Found } from './proof'

const RUNS = 24
/** What somebody waits for all day; a search and the counts beside a list may look at everything. */
const HOT = ['open', 'sheet', 'answer', 'list', 'list, later page'] as const
/** A hot request may take this many times as long with the most dockets as with the fewest. */
const MOST_TIMES = 3

type Times = Readonly<Record<string, number>>

/** A docket that is on the bench, so that it has a sheet. */
const onBench = (file: string): string => {
  const raw = new Database(file)
  const found = raw.prepare("SELECT docket FROM head WHERE state = 'on-bench' LIMIT 1").all()
  raw.close()
  return (found as { docket: string }[])[0]!.docket
}

const requests = async (file: string): Promise<Times> => {
  const db = await openFileDb(file)
  const app = appOn(db)
  let calls = 0
  const send = async (
    path: string,
    more: { method?: string; key?: string; json?: unknown } = {},
  ) => {
    const answer = await app.request(`http://127.0.0.1${path}`, {
      method: more.method ?? 'GET',
      headers: {
        authorization: `Bearer ${more.key ?? OWNER_KEY}`,
        'x-forwarded-for': `10.4.${Math.floor(calls / 200)}.${calls++ % 200}`,
        ...(more.json === undefined ? {} : { 'content-type': 'application/json' }),
      },
      ...(more.json === undefined ? {} : { body: JSON.stringify(more.json) }),
    })
    const text = await answer.text()
    if (answer.status >= 400) throw new Error(`${path}: ${answer.status} ${text.slice(0, 200)}`)
    return text
  }
  const json = async (...args: Parameters<typeof send>) => JSON.parse(await send(...args))
  const first = await json('/api/v1/dockets')
  const bench = onBench(file)
  const made = await json('/api/v1/enquiries', { method: 'POST', json: {} })
  const answer = `/api/v1/enquiries/${made.id}/answers/body`
  const kinds = ['saloon', 'estate'] as const
  let n = 0
  const p50 = async (work: () => Promise<unknown>): Promise<number> =>
    (await timedAsync(RUNS, work, RUNS)).p50
  const found = {
    list: await p50(() => send(paths.studio)),
    'list, later page': await p50(() => send(`/api/v1/dockets?after=${first.next}`)),
    search: await p50(() => send('/api/v1/dockets?q=Saloon')),
    'search for nobody': await p50(() => send('/api/v1/dockets?q=Nobodyofthatname')),
    open: await p50(() => send(paths.docket(bench))),
    sheet: await p50(() => send(paths.bench(bench))),
    answer: await p50(() =>
      send(answer, { method: 'PUT', key: made.key, json: { value: kinds[n++ % 2] } }),
    ),
  }
  await db.close()
  return found
}

/** The same requests with more and more dockets of realistic shape in one file, and what each takes on disk. */
export const proveGrowth = async (sizes: readonly number[]): Promise<Found> => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-growth-'))
  try {
    await fillDemo(join(folder, 'demo'), 'http://127.0.0.1', Date.now())
    const demo = join(folder, 'demo.db')
    const raw = new Database(dataPaths(join(folder, 'demo')).database)
    raw.exec(`VACUUM INTO '${demo}'`)
    raw.close()
    const all: { dockets: number; bytes: number; times: Times }[] = []
    for (const size of sizes) {
      const file = join(folder, 'grown.db')
      for (const end of ['', '-wal', '-shm']) rmSync(`${file}${end}`, { force: true })
      copyFileSync(demo, file)
      const dockets = multiply(file, size)
      all.push({ dockets, bytes: statSync(file).size, times: await requests(file) })
    }
    const [least, most] = [all[0]!, all.at(-1)!]
    const names = Object.keys(least.times)
    const slowest = Math.max(...HOT.map((name) => most.times[name]! / least.times[name]!))
    return {
      holds: slowest <= MOST_TIMES,
      figures: [
        ['dockets', all.map((a) => a.dockets).join(', ')],
        [
          'kilobytes on disk a docket',
          all.map((a) => (a.bytes / a.dockets / 1000).toFixed(1)).join(', '),
        ],
        ...names.map((name): [string, string] => [
          `${name}, milliseconds at p50`,
          all.map((a) => a.times[name]!.toFixed(1)).join(', '),
        ]),
        ['a hot request, most against fewest dockets', `at most ${slowest.toFixed(2)} ×`],
      ],
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
