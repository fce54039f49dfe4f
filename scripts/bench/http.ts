import { type Both, onNode } from './http/on-node'
import { onWorkerd } from './http/on-workerd'
import { makeScene, type Scene } from './http/scene'
import { atMost, type BenchSection, type Measured, shown, type Target } from './section'

/** Requests a route at the constant rate. */
const PER_ROUTE = 50

let made: Promise<Scene> | undefined
/** One scene for both runtimes; its folder goes when the process does. */
const sceneOf = (): Promise<Scene> => {
  made ??= makeScene(PER_ROUTE).then((scene) => {
    process.once('exit', scene.remove)
    return scene
  })
  return made
}

const ms = (n: number | undefined): string => (n === undefined ? '' : shown(n))

const rowsOf = (found: Both, scene: Scene): Measured['rows'] =>
  Object.entries(found).flatMap(([id, both]) =>
    (['ours', 'bare'] as const).map((who) => {
      const l = both[who]
      return [
        who === 'ours' ? id : '',
        who,
        shown(l.p50),
        shown(l.p99),
        shown(l.max),
        ms(l.cpu?.p50),
        ms(l.cpu?.p99),
        String(l.bytes),
        who === 'ours' ? String(scene.trips[id]) : '',
        who === 'ours' ? `${shown(both.ours.p50 / both.bare.p50)} ×` : '',
      ]
    }),
  )

const nodeTargets = (found: Both): readonly Target[] => {
  const { answer, 'open a docket': docket } = found
  const most = (
    what: string,
    n: number | undefined,
    limit: number,
    unit: string,
  ): readonly Target[] => (n === undefined ? [] : [atMost(what, n, limit, unit)])
  return [
    ...most(
      'an answer against the bare server, p50',
      answer && answer.ours.p50 / answer.bare.p50,
      2,
      '×',
    ),
    ...most('docket page of a hundred lines, processor p50', docket?.ours.cpu?.p50, 3, 'ms'),
  ]
}

const edgeTargets = (found: Both, scene: Scene): readonly Target[] =>
  scene.routes.flatMap(({ id, customer }) => {
    const cpu = found[id]?.ours.cpu
    return customer && cpu ? [atMost(`processor p99 of "${id}"`, cpu.p99, 10, 'ms')] : []
  })

const section = (
  id: string,
  title: string,
  run: (scene: Scene) => Promise<Both>,
  targets: (found: Both, scene: Scene) => readonly Target[],
): BenchSection => ({
  id,
  title,
  missing: () => null,
  run: async () => {
    const scene = await sceneOf()
    const found = await run(scene)
    const trips = Math.max(...Object.values(scene.trips))
    return {
      figures: { routes: found, trips: scene.trips },
      head: ['route', 'who', 'p50', 'p99', 'max', 'cpu p50', 'cpu p99', 'bytes', 'trips', 'times'],
      rows: rowsOf(found, scene),
      targets: [
        ...targets(found, scene),
        atMost('round trips to the database in one request', trips, 2, ''),
      ],
      notes: [
        'Milliseconds. Bare: Hono on the same runtime, the same statements by the plain driver, the same',
        'bytes. Sent at a constant rate and counted from when each was due; processor time of the server',
        'alone, over requests sent one by one.',
      ],
    }
  },
})

export const nodeSection = section(
  'node',
  'Routes on Node, the database a file',
  onNode,
  nodeTargets,
)
export const edgeSection = section(
  'edge',
  'Routes in workerd, the database over HTTP on this machine',
  onWorkerd,
  edgeTargets,
)
