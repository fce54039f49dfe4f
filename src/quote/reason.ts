/**
 * One link of the chain behind a figure: the rule that spoke, what it took from which row of a table,
 * and where the rule or the row comes from. The facts stand beside it as `because`. Said as
 * `reason.<rule>` with the row as parameters.
 */
export type Reason = {
  readonly rule: string
  readonly row?: Readonly<Record<string, string | number>>
  readonly source: string
}

/** Whose business a figure is when the studio set it itself. */
export const STUDIO = 'the studio’s own setting'
export const OWN = 'own estimate'
