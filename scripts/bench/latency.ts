import { answerByKind } from '../../tests/http/answer-by-kind'
import { openWorkerWorld } from '../../tests/support/worker-world'
import { sender } from './http/prepare'
import { atMost, type BenchSection, shown, type Target } from './section'
import { timedAsync } from './timed'

const DELAYS = [0, 25, 100, 250] as const
const RUNS = 5

type Found = Record<string, Record<number, number>>

/** What a customer's step takes when every round trip to the database takes so long, in workerd. */
const measure = async (): Promise<Found> => {
  const world = await openWorkerWorld({ runtime: 'worker', trustProxy: true })
  try {
    const send = sender(world.baseUrl)
    const { id, key, question: first } = await send('POST', '/api/v1/enquiries', { json: {} })
    const own = `/api/v1/enquiries/${id}`
    for (let question = first; question !== null; ) {
      const path = `${own}/answers/${question.id}`
      ;({ question } = await send('PUT', path, { key, json: answerByKind(question) }))
    }
    const json = answerByKind(first)
    const steps = {
      answer: () => send('PUT', `${own}/answers/${first.id}`, { key, json }),
      estimate: () => send('GET', `${own}/estimate`, { key }),
      'open a docket': () => send('GET', `/api/v1/dockets/${id}`, { key: world.ownerKey }),
      list: () => send('GET', '/api/v1/dockets', { key: world.ownerKey }),
    }
    const found: Found = {}
    for (const ms of DELAYS) {
      if (ms > 0) world.hrana?.faults.always({ kind: 'delay', ms })
      for (const [name, step] of Object.entries(steps)) {
        found[name] = {
          ...found[name],
          [ms]: (await timedAsync(RUNS, step, ms === 0 ? 20 : 1)).p50,
        }
      }
    }
    return found
  } finally {
    await world.close()
  }
}

/** The edge with a database far away: a step is one journey to read and one to write, no more. */
export const latencySection: BenchSection = {
  id: 'latency',
  title: 'In workerd with a database 25, 100 and 250 ms away (milliseconds at p50)',
  missing: () => null,
  run: async () => {
    const found = await measure()
    const far = DELAYS.at(-1)!
    const journeys = (times: Record<number, number>): number => (times[far]! - times[0]!) / far
    return {
      figures: found,
      head: ['step', ...DELAYS.map((ms) => `${ms} ms away`), 'journeys'],
      rows: Object.entries(found).map(([name, times]) => [
        name,
        ...DELAYS.map((ms) => shown(times[ms]!)),
        shown(journeys(times)),
      ]),
      targets: Object.entries(found).map(
        ([name, times]): Target => ({
          ...atMost(`journeys to the database of "${name}"`, Math.round(journeys(times)), 2, ''),
          found: shown(journeys(times)),
        }),
      ),
    }
  },
}
