import { type BodyOf, kinds } from '../../docket/kinds'
import type { NewLine } from '../../docket/line'
import { inHandOf, SUPPLY, type WantedItem } from '../../jobsheet/in-hand'
import type { EstimateStep } from '../../quote/estimate-types'
import { wantedText } from '../../words/wanted-text'
import { type Fault, invalid } from '../http/problem'
import type { Call, Load, Studio } from '../route'
import { mayWrite } from './bench-rules'
import { appendLines, byOf, checkMatch, type Desk } from './desk'

type Any = Call<unknown, unknown, Load>

/** What a docket waits for before its car comes, from the steps in force. */
export const wantedOf = (desk: Desk, steps: readonly EstimateStep[]): readonly WantedItem[] => {
  const { docket } = desk
  const answer = desk.answers['locking-key']
  const trades = (docket.revisions.at(-1)?.adjustments ?? []).flatMap((a) =>
    a.kind === 'sublet' ? [[a.step, a.name] as const] : [],
  )
  return inHandOf(
    {
      steps,
      lockingKey: answer && 'value' in answer ? answer.value : undefined,
      trades: Object.fromEntries(trades),
    },
    {
      ...docket.bench.inHand,
      done: (step) => docket.bench.steps[step]?.state === 'done',
    },
    docket.dated?.start ?? null,
  )
}

export const thingOf = (item: WantedItem, studio: Studio): string =>
  item.thing ?? wantedText(item.item, studio.words)

export type InHandGiven = {
  /** How far each thing is, by its item. */
  readonly supply: readonly Omit<BodyOf<'supplied'>, 'thing'>[]
  /** Something else that is wanted. */
  readonly wanted?: Omit<BodyOf<'wanted'>, 'item'> | undefined
}

/** Keeps how far each thing is, where that changed, and what else is wanted. Throws 422 by field. */
export const keepInHand = (
  call: Any,
  desk: Desk,
  steps: readonly EstimateStep[],
  given: InHandGiven,
) => {
  checkMatch(call, desk)
  const items = wantedOf(desk, steps)
  const faults: Fault[] = []
  const lines: NewLine[] = []
  const add = (kind: 'wanted' | 'supplied', body: object): void => {
    lines.push({
      id: call.newId(),
      v: 1,
      kind,
      body: kinds[kind].parse(body),
      by: byOf(call.who),
      device: 'desk',
      n: desk.docket.rev + 1 + lines.length,
      at: call.now,
    })
  }
  for (const s of given.supply) {
    const item = items.find((i) => i.item === s.item)
    if (!item || !SUPPLY.includes(s.state)) {
      faults.push({ pointer: `/state:${s.item}`, code: 'ERR_VALUE' })
      continue
    }
    if (item.state === s.state && (item.expected ?? undefined) === s.expected) continue
    add('supplied', { ...s, ...(item.thing === null ? {} : { thing: item.thing }) })
  }
  if (given.wanted) {
    const item = `own:${call.newId()}`
    add('wanted', { item, ...given.wanted })
  }
  if (faults.length > 0) throw invalid(faults)
  if (lines.length === 0) return { docket: desk.docket, writes: [] }
  mayWrite(
    desk.docket,
    lines.map((l) => l.kind),
  )
  return appendLines(desk.id, desk.lines, desk.head, lines)
}
