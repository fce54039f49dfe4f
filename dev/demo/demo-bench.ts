import { type DemoDocket, office } from './demo-docket'

type Body = Readonly<Record<string, unknown>>
type Given = readonly [kind: string, body: Body]

const DEVICE = 'bench-phone'

/** Writes bench lines from one phone, a few minutes apart; answers with their ids. */
export const bench = async (
  d: DemoDocket,
  lines: readonly Given[],
  minutesApart = 3,
): Promise<readonly string[]> => {
  const sent = lines.map(([kind, body]) => {
    d.n += 1
    d.app.clock.now += minutesApart * 60_000
    return {
      id: `${d.car.id}-${String(d.n).padStart(4, '0')}`,
      kind,
      body,
      device: DEVICE,
      n: d.n,
      at: d.app.clock.now,
    }
  })
  await d.app.send('POST', `/api/v1/dockets/${d.id}/lines`, {
    key: d.app.ownerKey,
    body: { lines: sent },
  })
  return sent.map((line) => line.id)
}

export type SheetStep = { readonly id: string; readonly state: string; readonly name?: string }
type Sheet = {
  readonly next: string | null
  readonly steps: readonly (SheetStep & { readonly expectedMinutes: number })[]
  readonly checks: readonly { readonly id: string; readonly state: string }[]
}

export const readSheet = async (d: DemoDocket): Promise<Sheet> =>
  (await d.app.send('GET', `/api/v1/dockets/${d.id}/sheet`, {
    key: d.app.ownerKey,
  })) as unknown as Sheet

/** Does the next steps of the sheet, each in about its time: `pace` 1.1 is a tenth slower. */
export const work = async (d: DemoDocket, most: number, pace = 1): Promise<void> => {
  const { steps } = await readSheet(d)
  const open = steps.filter((s) => s.state !== 'done').slice(0, most)
  for (const step of open) {
    const minutes = Math.max(1, Math.round(step.expectedMinutes * pace))
    await bench(d, [['began', { step: step.id }]], 1)
    d.app.clock.now += minutes * 60_000
    await bench(d, [['done', { step: step.id }]], 0)
  }
}

/** Everything but the hand-over itself, and every check that is owed. */
export const finish = async (d: DemoDocket, pace = 1): Promise<void> => {
  const { steps } = await readSheet(d)
  const last = steps.filter((s) => s.id !== 'hand-over' && s.state !== 'done').length
  await work(d, last, pace)
  const { checks } = await readSheet(d)
  const open = checks.filter((c) => c.state === 'open')
  if (open.length > 0)
    await bench(
      d,
      open.map((c): Given => ['checked', { check: c.id }]),
    )
  await office(d, 'POST', '/move', { to: 'finished' })
}

/** Readings of some panels in µm, several spots each; `when` after polishing. */
export const readings = (
  kind: 'panel' | 'reference',
  map: Readonly<Record<string, readonly number[]>>,
  when?: 'before' | 'after',
): readonly Given[] =>
  Object.entries(map).map(
    ([panel, values]): Given => [
      'reading',
      { panel, kind, values, probe: 'magnetic', ...(when === undefined ? {} : { when }) },
    ],
  )

/** Asks for extra work; answers with its id. */
export const askExtra = async (
  d: DemoDocket,
  text: string,
  minutes: number,
  finding?: string,
): Promise<string> => {
  const made = await d.app.send('POST', `/api/v1/dockets/${d.id}/extras`, {
    key: d.app.ownerKey,
    body: { text, minutes, ...(finding === undefined ? {} : { finding }) },
  })
  return String(made.extra)
}

export const decideExtra = async (
  d: DemoDocket,
  extra: string,
  decision: 'agree' | 'refuse',
): Promise<void> => {
  await d.app.send('POST', `/api/v1/enquiries/${d.id}/extras/${extra}/decision`, {
    key: d.key,
    body: { decision, name: d.car.person.name },
  })
}
