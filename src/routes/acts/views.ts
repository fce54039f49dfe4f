import type { Answer, Answers } from '../../intake/answers'
import { isUnsure } from '../../intake/answers'
import { photoGuide } from '../../intake/photo-guide'
import type { Phrase, Question } from '../../intake/question'
import { reader } from '../../intake/reader'
import { type Replayed, replay } from '../../intake/replay'
import { script } from '../../intake/script'
import type { Estimate } from '../../quote/estimate-types'
import { answerText } from '../../words/answer-text'
import type { Words } from '../../words/render'
import type { Desk } from './desk'

const say = (words: Words, phrase: Phrase) => ({
  key: phrase.key,
  params: phrase.params ?? {},
  text: words.say(phrase),
})

/** A question as the contract shows it, texts rendered. */
export const questionView = (q: Question<unknown>, words: Words, answers: Answers = {}) => ({
  id: q.id,
  kind: q.kind,
  topic: q.topic,
  stage: q.stage,
  prompt: words.say(`q.${q.id}.prompt`),
  why: words.say(`q.${q.id}.why`),
  ...(q.options
    ? {
        options: q.options.map((value) => ({
          value,
          label: words.say(`q.${q.id}.o.${value}`),
          ...(words.has(`q.${q.id}.o.${value}.hint`)
            ? { hint: words.say(`q.${q.id}.o.${value}.hint`) }
            : {}),
        })),
      }
    : {}),
  ...(q.kind === 'money' ? { unit: words.formats.currency } : {}),
  ...(q.unit ? { unit: q.unit } : {}),
  ...(q.units ? { units: q.units } : {}),
  ...(q.min === undefined ? {} : { min: q.min }),
  ...(q.max === undefined ? {} : { max: q.max }),
  ...(q.kind === 'photos'
    ? {
        subjects: photoGuide(reader(answers)).map((value) => ({
          value,
          label: words.say(`photo.${value}`),
          hint: words.say(`photo.${value}.how`),
        })),
      }
    : {}),
  unsureAllowed: q.unsureAllowed,
  optional: q.optional,
})

const answerView = (q: Question<unknown>, answer: Answer, words: Words) => ({
  question: q.id,
  ...(isUnsure(answer) ? { unsure: true } : { value: answer.value }),
  text: answerText(q, answer, words),
})

/** Where an enquiry stands, as the contract shows it. */
export const enquiryView = (
  desk: Pick<Desk, 'id' | 'docket'>,
  answers: Answers,
  words: Words,
  replayed: Replayed = replay(script, answers),
) => ({
  id: desk.id,
  state: desk.docket.state,
  rev: desk.docket.rev,
  script: script.version,
  ...(desk.docket.reference === null ? {} : { reference: desk.docket.reference }),
  answers: replayed.answered.map((a) => answerView(a.question, a.answer, words)),
  setAside: replayed.setAside.flatMap((id) => {
    const q = script.questions.find((each) => each.id === id)
    const answer = answers[id]
    return q && answer ? [answerView(q, answer, words)] : []
  }),
  question: replayed.current === null ? null : questionView(replayed.current, words, answers),
  needed: replayed.needed,
  progress: replayed.progress,
})

/** An estimate as the contract shows it: the same figures, with every text rendered. */
export const estimateView = (e: Estimate, words: Words, digest: string | null) => ({
  ...e,
  scope: {
    ...e.scope,
    text: words.say(`level.${e.scope.level}`),
    turnedDown: e.scope.turnedDown.map((t) => ({
      ...t,
      text: words.say(`refuse.${t.id}`, t.params),
      turn: words.say(`refuse.${t.id}.turn`, t.params),
    })),
  },
  steps: e.steps.map((s) => ({
    ...s,
    text: s.name ?? words.say(`step.${s.id}`),
    cautions: s.cautions.map((id) => ({ id, text: words.say(`caution.${id}`) })),
  })),
  couldAdd: e.couldAdd.map((c) => ({
    ...c,
    text: words.say(c.kind === 'event' ? `event.${c.id}` : `step.${c.id}`),
  })),
  riskNotes: e.riskNotes.map((n) => ({
    ...n,
    text: words.say(`risk.${n.id}`, n.params),
    means: words.say(`risk.${n.id}.means`, n.params),
    ...(n.decision
      ? { decision: words.say(`risk.${n.id}.decision`, n.params) }
      : { decision: null }),
    ...(n.caution === null ? {} : { cautionText: words.say(`caution.${n.caution}`) }),
  })),
  expectation: {
    removedShare: e.expectation.removedShare,
    because: e.expectation.because,
    ...say(words, e.expectation.phrase),
  },
  openPoints: e.openPoints.map((o) => ({ ...o, text: words.say(`open.${o.id}`) })),
  narrowing: e.narrowing.map((n) => ({ ...n, text: words.say(`q.${n.question}.prompt`) })),
  paint: {
    panels: e.paint.panels.map((p) => ({
      ...p,
      text: words.say(`verdict.${p.verdict}`),
      name: words.say(`panel.${p.panel}`),
      why: p.why.map((w) => say(words, w)),
    })),
  },
  basis: { ...e.basis, ...(digest === null ? {} : { digest }) },
})
