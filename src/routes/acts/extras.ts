import { agreementOf } from '../../docket/agreement'
import { rateOf } from '../../kernel/money'
import { enqueue } from '../../store/outbox'
import { insertText } from '../../store/texts'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, keepText, type Written, write } from './desk'
import { notNow } from './revising'

export type ExtraGiven = {
  readonly text: string
  /** What happens if the customer says no. */
  readonly ifNot?: string | undefined
  readonly minutes: number
  readonly money?: number | undefined
  readonly finding?: string | undefined
  readonly steps?: readonly string[] | undefined
}

/** The agreement as the bench reads it, with the name of who decides. */
export const agreementView = (desk: Desk) => {
  const { decides, ...agreed } = agreementOf(desk.docket)
  return { ...agreed, decides: decides === null ? null : (desk.texts.get(decides) ?? null) }
}

const ASKABLE = new Set(['dated', 'on-bench', 'held', 'part-done', 'come-back'])

/**
 * Asks the customer about extra work, priced at the studio's own rate; what fits the limit the
 * customer set with the yes is agreed at once and said so; who set none is always asked. Money net,
 * minor units.
 */
export const askExtra = (call: Call<unknown, unknown, Load>, desk: Desk, given: ExtraGiven) => {
  checkMatch(call, desk)
  if (!ASKABLE.has(desk.docket.state)) throw notNow(desk.docket, [])
  const { engine } = call.studio
  const perHour = engine.ratePerHour + engine.materialsPerHour
  const amount = Math.round((given.minutes * perHour) / 60) + (given.money ?? 0)
  const tax = rateOf(amount, engine.taxMillionths, engine.taxRounding)
  const within = amount + tax <= agreementOf(desk.docket).left
  const extra = call.newId()
  const { ref, row } = keepText(call, desk.id, 'extra', given.text)
  const ifNot = given.ifNot?.trim() ? keepText(call, desk.id, 'extra.if-not', given.ifNot) : null
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
        ...(ifNot ? { ifNot: ifNot.ref } : {}),
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
    writes: [...writes, insertText(row), ...(ifNot ? [insertText(ifNot.row)] : []), message],
  }
}
