import type { QuoteOption } from '../../docket/kinds'
import { script } from '../../intake/script'
import type { Estimated } from '../../quote/estimate'
import {
  type OptionGiven,
  type OptionMade,
  optionInputs,
  sameOptions,
} from '../../quote/options/option'
import type { Stmt } from '../../store/db'
import { insertText } from '../../store/texts'
import { type Fault, invalid } from '../http/problem'
import type { Call, Load } from '../route'
import { type Desk, keepText } from './desk'
import { deskInput, keepEstimate } from './estimating'
import { offerOf } from './offer-kept'

type Any = Call<unknown, unknown, Load>

/** An option as the studio gives it, with its own words about it. */
export type OptionTyped = OptionGiven & { readonly text?: string | undefined }

/** Where a fault of the nth option points. */
export type OptionPointer = (n: number) => string
const inList: OptionPointer = (n) => `/options/${n}`

/** Throws 422 naming each option that is no option: too few, an unknown panel, the same work twice. */
export const checkOptions = (made: readonly OptionMade[], at: OptionPointer): void => {
  const faults: Fault[] = []
  if (made.length === 1) faults.push({ pointer: at(0), code: 'ERR_TWO_OPTIONS' })
  made.forEach((o, i) => {
    const panels = new Set(o.made.paint.panels.map((p) => p.panel))
    if (o.given.panels?.some((p) => !panels.has(p)))
      faults.push({ pointer: at(i), code: 'ERR_OPTION_PANEL' })
  })
  const same = sameOptions(made)
  made.forEach((o, i) => {
    if (same.includes(o.letter)) faults.push({ pointer: at(i), code: 'ERR_SAME_OPTION' })
  })
  if (faults.length > 0) throw invalid(faults)
}

/** What a revision keeps of its options, made by the same engine, with the statements that keep them. */
export const keepOptions = async (
  call: Any,
  desk: Desk,
  adjustments: Parameters<typeof deskInput>[3],
  options: readonly OptionTyped[],
  deposit: number | undefined,
  at: OptionPointer = inList,
): Promise<{
  readonly first: { readonly made: Estimated; readonly digest: string }
  readonly kept: readonly QuoteOption[]
  readonly writes: readonly Stmt[]
} | null> => {
  if (options.length === 0) return null
  const { words } = call.studio
  const inputs = optionInputs(
    deskInput(call.studio, call.now, desk, adjustments),
    options,
    (letter) => words.say('option.why', { letter: letter.toUpperCase() }),
  )
  const stored = await Promise.all(
    inputs.map(async (o) => ({ ...o, ...(await keepEstimate(o.input, script.version, call.now)) })),
  )
  checkOptions(stored, at)
  const writes: Stmt[] = stored.map((o) => o.stmt)
  const kept = stored.map(({ letter, given, made, digest }): QuoteOption => {
    const note = given.text?.trim() ? keepText(call, desk.id, 'option', given.text.trim()) : null
    if (note) writes.push(insertText(note.row))
    const offer = offerOf(made)
    return {
      option: letter,
      treatment: given.treatment,
      ...(given.panels?.length ? { panels: [...given.panels] } : {}),
      ...(note ? { text: note.ref } : {}),
      digest,
      adjustments: [...made.adjusted.applied],
      offer: deposit === undefined ? offer : { ...offer, deposit },
      minutes: {
        low: made.labourMinutes.low,
        likely: made.labourMinutes.likely,
        high: made.labourMinutes.high,
      },
      ready: { people: made.plan.people, days: made.plan.days.length },
      ...(made.expectation.removedShare ? { removed: made.expectation.removedShare } : {}),
    }
  })
  const first = stored[0]
  return first ? { first, kept, writes } : null
}
