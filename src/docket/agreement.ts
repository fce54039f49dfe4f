import type { Docket } from './fold'
import type { UNANSWERED } from './kinds'

/** What the customer agreed beforehand about work nobody knew of, with tax, minor units. */
export type Agreement = {
  /** Extras up to this much in all need no asking; 0: every one is asked. */
  readonly limit: number
  /** How much of it is left after the extras agreed so far. */
  readonly left: number
  readonly unanswered: (typeof UNANSWERED)[number]
  /** Where the name of who decides stands. */
  readonly decides: string | null
}

/** Who said nothing about a limit is always asked, and the work waits for the answer. */
export const agreementOf = ({
  agreed,
  extras,
}: {
  readonly agreed: Pick<
    NonNullable<Docket['agreed']>,
    'extrasLimit' | 'unanswered' | 'decides'
  > | null
  readonly extras: Docket['extras']
}): Agreement => {
  const limit = agreed?.extrasLimit ?? 0
  const used = extras
    .filter((e) => e.decision?.decision === 'agree')
    .reduce((sum, e) => sum + e.amount + e.tax, 0)
  return {
    limit,
    left: Math.max(0, limit - used),
    unanswered: agreed?.unanswered ?? 'wait',
    decides: agreed?.decides?.text ?? null,
  }
}
