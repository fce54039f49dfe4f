/** What happens where the customer does not want the smaller result. */
export const AFTER_NO = ['finish-only', 'leave', 'stop'] as const
export type AfterNo = (typeof AFTER_NO)[number]

/** What the customer has been asked, and said, of a result that measuring made smaller. */
export type Asked = {
  readonly panels: readonly { readonly panel: string }[]
  readonly decision: {
    readonly decision: 'go-on' | 'no'
    readonly instead?: AfterNo
  } | null
}

/** What follows from it for the bench. */
export type PolishWord = {
  /** Polishing waits for a yes. */
  readonly waits: boolean
  /** No more polishing; the other work is finished. */
  readonly noPolish: boolean
  /** Panels that stay as they are. */
  readonly left: readonly string[]
  /** No more work at all. */
  readonly stop: boolean
}

export const NO_WORD: PolishWord = { waits: false, noPolish: false, left: [], stop: false }

/**
 * The word in force: an open question holds the polishing; a no is followed as the customer chose it,
 * and a later yes lifts it.
 */
export const polishWord = (asked: readonly Asked[]): PolishWord => {
  const said = asked.findLast((a) => a.decision !== null)
  const waits = asked.some((a) => a.decision === null)
  if (said?.decision?.decision !== 'no') return { ...NO_WORD, waits }
  const instead = said.decision.instead ?? 'stop'
  return {
    waits,
    noPolish: instead === 'finish-only',
    left: instead === 'leave' ? said.panels.map((p) => p.panel) : [],
    stop: instead === 'stop',
  }
}
