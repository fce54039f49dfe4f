import type { Answers } from '../../src/intake/answers'
import { script } from '../../src/intake/script'
import type { Estimated } from '../../src/quote/estimate'
import { answerText } from '../../src/words/answer-text'
import { english } from './studio'

const money = (minor: number): string => (minor / 100).toFixed(2)
const hours = (minutes: number): string => (minutes / 60).toFixed(1)
const percent = (share: number): string => `${Math.round(share * 100)} %`

const section = (title: string, lines: readonly string[]): string =>
  `${title}\n${lines.length === 0 ? '  none' : lines.map((line) => `  ${line}`).join('\n')}\n`

const because = (ids: readonly string[]): string =>
  `because of ${ids.join(', ') || 'nothing asked'}`

const stepLines = (e: Estimated): readonly string[] =>
  e.steps.map((s) => {
    const line = e.offer.lines.find((each) => each.step === s.id)
    const amount = line === undefined ? 'no amount' : money(line.amount)
    const cap = s.byTime === null ? '' : `, by time up to ${hours(s.byTime.capMinutes)} h`
    const { optimistic, mode, pessimistic } = s.minutes
    return `${english.say(`step.${s.id}`)}: ${optimistic}–${mode}–${pessimistic} min, ${amount}${cap} (${s.source})`
  })

const dayLines = (e: Estimated): readonly string[] =>
  e.plan.days.map((d) => `${d.date}: ${d.blocks.map((b) => b.step).join(', ') || 'drying only'}`)

/** A whole estimate as text a detailer can check line by line. */
export const docketText = (title: string, answers: Answers, e: Estimated): string => {
  const told = script.questions.flatMap((q) => {
    const answer = answers[q.id]
    return answer === undefined ? [] : [`${q.id}: ${answerText(q, answer, english)}`]
  })
  const { offer, price, labourMinutes: labour } = e
  const notes = e.riskNotes.map(
    (n) => `[${n.severity}] ${english.say(`risk.${n.id}`)} ${because(n.because)}`,
  )
  return [
    `${title}\n`,
    section('Told', told),
    section('Steps: best, likely, worst minutes; amount without tax', stepLines(e)),
    section('Offer', [
      `net ${money(offer.net)}, tax ${money(offer.tax)}, total ${money(offer.total)}, enough in ${percent(offer.chanceEnough)}`,
      `shown range ${money(offer.low)} to ${money(offer.high)}; net ${money(price.low)} – ${money(price.likely)} – ${money(price.high)}`,
      `hours ${hours(labour.low)} – ${hours(labour.likely)} – ${hours(labour.high)}, mean ${hours(labour.mean)}`,
    ]),
    section('Days', [
      ...dayLines(e),
      `ready ${e.plan.readyLikelyLocal.date}, at the latest ${e.plan.readyCautiousLocal.date}`,
    ]),
    section(
      'Could add',
      e.couldAdd.map(
        (a) =>
          `${percent(a.probability)} ${english.say(`${a.kind}.${a.id}`)}: ${a.minutes} min, ${money(a.price)}`,
      ),
    ),
    section(
      'Turned down',
      e.scope.turnedDown.map((t) => english.say(`refuse.${t.id}`)),
    ),
    section('Notes', notes),
    section(
      'Check on arrival',
      e.openPoints.map((p) => english.say(`open.${p.id}`)),
    ),
    section('Expect', [english.say(e.expectation.phrase)]),
  ].join('\n')
}
