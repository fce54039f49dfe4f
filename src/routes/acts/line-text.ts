import type { Line } from '../../docket/line'
import type { Words } from '../../words/render'
import { wantedText } from '../../words/wanted-text'

type Body = Readonly<Record<string, unknown>>

const spoken = (words: Words, key: string, otherwise: string): string =>
  words.has(key) ? words.say(key) : otherwise

const answeredKey = (b: Body): string =>
  b.lastTime ? 'line.answered.last-time' : b.why ? 'line.answered.corrected' : 'line.answered'

/** One line of the docket as a short sentence; nothing a person typed is in it. */
export const lineText = (line: Pick<Line, 'kind' | 'body'>, words: Words): string => {
  const b = line.body as Body
  const step = (id: unknown): string => spoken(words, `step.${String(id)}`, String(id))
  const panel = (id: unknown): string => spoken(words, `panel.${String(id)}`, String(id))
  const question = (): string => spoken(words, `q.${String(b.question)}.prompt`, String(b.question))
  const thing = (): string => String(b.thing ?? wantedText(String(b.item), words))
  const amount = (minor: number): string => words.say('message.amount', { amount: minor })
  switch (line.kind) {
    case 'answered':
      return words.say(answeredKey(b), { question: question() })
    case 'unanswered':
    case 're-asked':
      return words.say(`line.${line.kind}`, { question: question() })
    case 'answered-own':
      return words.say('line.answered-own', { question: String(b.prompt) })
    case 'submitted':
      return words.say('line.submitted', { reference: String(b.reference) })
    case 'moved':
      return words.say('line.moved', { state: words.say(`page.state.${String(b.to)}`) })
    case 'revised':
      return words.say('line.revised', {
        revision: Number(b.revision),
        total: amount((b.offer as { total: number }).total),
      })
    case 'sent':
      return words.say('line.sent', { revision: Number(b.revision) })
    case 'decided':
      return words.say(`line.decided.${String(b.decision)}`, { revision: Number(b.revision) })
    case 'dated':
      return words.say('line.dated', { date: String(b.start) })
    case 'began':
    case 'broke-off':
    case 'done':
      return words.say(`line.${line.kind}`, { step: step(b.step) })
    case 'reading':
      return words.say('line.reading', {
        panel: panel(b.panel),
        values: (b.values as readonly number[]).map(String),
      })
    case 'unreadable':
    case 'allowed':
      return words.say(`line.${line.kind}`, { panel: panel(b.panel) })
    case 'polished':
      return words.say('line.polished', {
        panel: panel(b.panel),
        sequence: spoken(words, `sequence.${String(b.sequence)}`, String(b.sequence)),
      })
    case 'found':
      return words.say('line.found', { place: String(b.place) })
    case 'removed':
      return words.say('line.removed', { item: String(b.item) })
    case 'checked':
      return words.say(b.waived ? 'line.waived' : 'line.checked', {
        check: spoken(words, `check.${String(b.check)}`, String(b.check)),
      })
    case 'told':
      return words.say(`line.told.${String(b.how)}`)
    case 'paid':
      return words.say(`line.paid.${String(b.what)}`, { amount: amount(Number(b.amount)) })
    case 'wanted':
      return words.say('line.wanted', { thing: thing() })
    case 'supplied':
      return words.say(`line.supplied.${String(b.state)}`, { thing: thing() })
    case 'extra-asked':
      return words.say('line.extra-asked', { total: amount(Number(b.amount) + Number(b.tax)) })
    case 'extra-decided':
      return words.say(`line.extra-decided.${String(b.decision)}`)
    case 're-issue-decided':
      return words.say(`line.re-issue-decided.${String(b.decision)}`)
    case 'told-after':
      return words.say(b.well ? 'line.told-after.well' : 'line.told-after.wrong')
    case 'timer-set':
      return words.say('line.timer-set', { minutes: Number(b.minutes) })
    case 'film-answered':
    case 'stayed-overnight':
      return words.say(`line.${line.kind}.${String(b.go)}`)
    case 'crew-changed':
      return words.say('line.crew-changed', { people: Number(b.people) })
    case 'recorded':
      return words.say('line.recorded', { value: String(b.value) })
    case 'struck':
      return words.say('line.struck', { why: String(b.why) })
    default:
      return words.say(`line.${line.kind}`)
  }
}

/** What was written behind a state of the docket: who, when and what, for one who saw only that. */
export const changedSince = (lines: readonly Line[], rev: number, words: Words) =>
  lines
    .filter((l) => l.seq > rev)
    .map((l) => ({
      kind: l.kind,
      by: l.by,
      at: new Date(l.at).toISOString(),
      text: lineText(l, words),
    }))
