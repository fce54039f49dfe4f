import { rateOf } from '../../kernel/money'
import { enqueue } from '../../store/outbox'
import { insertText } from '../../store/texts'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, keepText, type Written, write } from './desk'
import { notNow } from './revising'

export type ExtraGiven = {
  readonly text: string
  readonly minutes: number
  readonly money?: number | undefined
  readonly finding?: string | undefined
  readonly steps?: readonly string[] | undefined
}

const ASKABLE = new Set(['dated', 'on-bench', 'held', 'part-done', 'come-back'])

/**
 * Asks the customer about extra work, priced at the studio's own rate; what fits the agreed limit for
 * extras is agreed at once and said so. Money net, minor units.
 */
export const askExtra = (call: Call<unknown, unknown, Load>, desk: Desk, given: ExtraGiven) => {
  checkMatch(call, desk)
  if (!ASKABLE.has(desk.docket.state)) throw notNow(desk.docket, [])
  const { engine, profile } = call.studio
  const perHour = engine.ratePerHour + engine.materialsPerHour
  const amount = Math.round((given.minutes * perHour) / 60) + (given.money ?? 0)
  const tax = rateOf(amount, engine.taxMillionths, engine.taxRounding)
  const agreedSoFar = desk.docket.extras
    .filter((e) => e.decision?.decision === 'agree')
    .reduce((sum, e) => sum + e.amount + e.tax, 0)
  const within = agreedSoFar + amount + tax <= profile.extrasLimit
  const extra = call.newId()
  const { ref, row } = keepText(call, desk.id, 'extra', given.text)
  const lines: Written[] = [
    {
      kind: 'extra-asked',
      body: {
        extra,
        text: ref,
        minutes: given.minutes,
        amount,
        tax,
        steps: [...(given.steps ?? [])],
        within,
        ...(given.finding === undefined ? {} : { finding: given.finding }),
      },
    },
    ...(within
      ? [
          {
            kind: 'extra-decided' as const,
            body: { extra, decision: 'agree' as const, how: 'limit' as const },
          },
        ]
      : []),
  ]
  const { writes, docket } = write(call, desk, lines)
  const message = enqueue({
    id: call.newId(),
    kind: 'extra.asked',
    docket: desk.id,
    payload: { docket: desk.id, extra, within },
    dedupe: `extra:${extra}`,
    nextAt: call.now,
  })
  return {
    extra,
    amount,
    tax,
    total: amount + tax,
    within,
    docket,
    writes: [...writes, insertText(row), message],
  }
}
