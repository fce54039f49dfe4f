import type { BodyOf } from './kinds'
import type { Line } from './line'

type Said = { readonly at: number; readonly text: string | null }

/** What the studio asked for a second time, changed for the customer, or asked of its own. */
export type AskedAgain = {
  /** The docket of the same car that the first answers came from. */
  readonly like: string | null
  /** Questions taken over from last time and not answered anew since. */
  readonly lastTime: readonly string[]
  /** Questions asked again and not answered since, with the studio's words about it. */
  readonly askedAgain: readonly (Said & { readonly question: string })[]
  /** True when one of them was answered and the studio has not acted on it yet. */
  readonly answeredAgain: boolean
  /** Answers the studio changed for the customer after sending, with the reason. */
  readonly corrected: Readonly<Record<string, Said>>
  /** Answers to the studio's own questions, by question. */
  readonly ownAnswers: Readonly<
    Record<string, Said & { readonly prompt: string; readonly by: string }>
  >
}

const ACTED: readonly string[] = ['revised', 'sent', 'replied', 'moved', 're-asked', 'dated']

/** Folds office lines in their order; struck ones are out already. */
export const foldAskedAgain = (office: readonly Line[]): AskedAgain => {
  let like: string | null = null
  let submitted = false
  let answeredAgain = false
  const lastTime = new Set<string>()
  const open = new Map<string, Said & { question: string }>()
  const corrected: Record<string, Said> = {}
  const ownAnswers: Record<string, Said & { prompt: string; by: string }> = {}
  const answered = (question: string, by: string): void => {
    lastTime.delete(question)
    if (open.delete(question) && by === 'customer') answeredAgain = true
  }
  for (const line of office) {
    if (ACTED.includes(line.kind) && line.by !== 'customer') answeredAgain = false
    switch (line.kind) {
      case 'opened':
        like = (line.body as BodyOf<'opened'>).like ?? null
        break
      case 'submitted':
        submitted = true
        break
      case 'answered': {
        const body = line.body as BodyOf<'answered'>
        answered(body.question, line.by)
        if (body.lastTime) lastTime.add(body.question)
        if (submitted && line.by === 'owner')
          corrected[body.question] = { at: line.at, text: body.why?.text ?? null }
        else delete corrected[body.question]
        break
      }
      case 'photo-added':
        answered('photos', line.by)
        break
      case 're-asked': {
        const body = line.body as BodyOf<'re-asked'>
        const said = { at: line.at, text: body.text?.text ?? null }
        open.set(body.question, { question: body.question, ...said })
        break
      }
      case 'answered-own': {
        const { question, prompt, text } = line.body as BodyOf<'answered-own'>
        ownAnswers[question] = { prompt, text: text.text, by: line.by, at: line.at }
        break
      }
    }
  }
  return {
    like,
    lastTime: [...lastTime],
    askedAgain: [...open.values()],
    answeredAgain,
    corrected,
    ownAnswers,
  }
}
