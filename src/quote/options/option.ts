import type { Adjustment } from '../adjustment'
import type { Estimated, EstimateInput } from '../estimate'
import { levelOfTreatment, type Treatment } from './treatment'

export const LETTERS = ['a', 'b', 'c'] as const
export type Letter = (typeof LETTERS)[number]

/** One of the ways the studio offers; without panels it is about the whole car. */
export type OptionGiven = {
  readonly treatment: Treatment
  readonly panels?: readonly string[] | undefined
}

/** The changes an option adds to those all options share; the last word on a panel counts. */
export const optionAdjustments = (
  shared: readonly Adjustment[],
  { treatment, panels }: OptionGiven,
  why: string,
): readonly Adjustment[] => {
  const level = levelOfTreatment(treatment)
  const own: readonly Adjustment[] =
    panels === undefined || panels.length === 0
      ? [{ kind: 'level', level, why }]
      : panels.map((panel) => ({ kind: 'level', panel, level, why }))
  return [...shared, ...own]
}

export type OptionInput<G extends OptionGiven = OptionGiven> = {
  readonly letter: Letter
  readonly given: G
  readonly input: EstimateInput
}
export type OptionMade = Pick<OptionInput, 'letter' | 'given'> & { readonly made: Estimated }

/** What each option is made from, lettered in the order given; at most three. */
export const optionInputs = <G extends OptionGiven>(
  base: EstimateInput,
  options: readonly G[],
  whyOf: (letter: Letter) => string,
): readonly OptionInput<G>[] =>
  LETTERS.flatMap((letter, i) => {
    const given = options[i]
    if (given === undefined) return []
    const adjustments = optionAdjustments(base.adjustments, given, whyOf(letter))
    return [{ letter, given, input: { ...base, adjustments } }]
  })

const workOf = ({ offer, steps }: Pick<Estimated, 'offer' | 'steps'>): string =>
  JSON.stringify([offer.net, steps.map((s) => [s.id, s.places, s.expectedMinutes])])

/** The options that come to the same as one before them: what the same work is called tells them apart. */
export const sameOptions = (options: readonly OptionMade[]): readonly Letter[] =>
  options
    .filter((o, i) =>
      options.slice(0, i).some((before) => {
        const alike = workOf(o.made) === workOf(before.made)
        const bothNone = levelOfTreatment(o.given.treatment) === 'none'
        return alike && !(bothNone && o.given.treatment !== before.given.treatment)
      }),
    )
    .map((o) => o.letter)
