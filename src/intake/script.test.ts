import { describe, expect, it } from 'vitest'
import { answerSets } from '../../tests/corpus/answer-sets'
import { anyAnswer } from '../../tests/corpus/levels'
import { draws } from '../../tests/corpus/random'
import { simpleAnswerSets } from '../../tests/corpus/simple'
import { walk } from '../../tests/corpus/walk'
import type { Answers } from './answers'
import { type Question, question } from './question'
import { DANGERS_OPTIONS } from './questions/dangers'
import { SERVICES_OPTIONS } from './questions/services'
import { MOST_QUESTIONS, replay } from './replay'
import { script } from './script'
import { checkScript } from './script-check'

const sets = answerSets()
const simple = simpleAnswerSets()
const count = (answers: Answers): number => Object.keys(answers).length
const toy = (id: string, more: Partial<Question<string>> = {}) =>
  question<string>({ id, topic: 'car', stage: 'first', kind: 'text', ...more })

describe('checkScript', () => {
  it('finds nothing wrong with the script', () => {
    expect(
      checkScript(
        script,
        sets.filter((_, n) => n % 6 === 0),
      ),
    ).toEqual([])
  })

  it('names each kind of fault', () => {
    const late = toy('late')
    const early = toy('early', { asked: (r) => r.value(late) !== 'x' })
    const never = toy('never', { asked: () => false })
    const heavy = toy('heavy', { likely: [['x', 0.7]], unsureAllowed: true, likelySource: 'test' })
    const odd = toy('odd', { options: ['a', 'a'], likely: [['b', 1]] })
    const faults = checkScript(
      { version: 't', questions: [early, never, heavy, odd, late, toy('late')] },
      [{}],
    )
    expect(faults).toEqual([
      'heavy: weights sum to 0.7',
      'odd: options belong to a choice',
      'odd: an option twice',
      'odd: weights without a source',
      'odd: weights but unsure is not allowed',
      'an id stands twice',
      'early: reads late, which is not asked before it',
      'never: never asked',
    ])
  })

  it('asks the dangers first, and how to reach the owner last', () => {
    const ids = script.questions.map((q) => q.id)
    expect(ids[0]).toBe('dangers')
    expect(ids.at(-1)).toBe('contact')
    const stages = script.questions.map((q) => q.stage)
    expect(stages.lastIndexOf('first')).toBeLessThan(stages.indexOf('narrow'))
  })

  it('gives weights to everything an owner may not know, save what changes no figure', () => {
    const bare = script.questions.filter((q) => q.unsureAllowed && !q.likely).map((q) => q.id)
    expect(bare).toEqual(['year-check', 'owner-since', 'owner-check'])
  })
})

describe('the length of the conversation', () => {
  it('is 12 or fewer for a car without a history, whatever body and one or two services', () => {
    expect(simple).toHaveLength(14 * 55 * 2 * 4)
    // Two answers that do not go together cost one question more: such a car is asked about.
    const odd = script.questions.filter((q) => q.check).map((q) => q.id)
    const most = (a: Answers) => (odd.some((id) => id in a) ? 13 : 12)
    expect(simple.filter((a) => count(a) > most(a)).map((a) => Object.keys(a))).toEqual([])
    expect(simple.filter((a) => most(a) === 12).length).toBeGreaterThan(simple.length * 0.9)
    for (const answers of simple.filter((_, n) => n % 7 === 0))
      expect(replay(script, answers).current).toBeNull()
  })

  it('is never more than 30, for any pair of answers and any dangers together', () => {
    const draw = draws(3)
    const troubled = Array.from({ length: 256 * 6 }, (_, n) =>
      walk(script, (q) => {
        if (q.id === 'dangers')
          return { value: DANGERS_OPTIONS.filter((_d, i) => ((n % 256) >> i) % 2 === 1) }
        if (q.id === 'services') return { value: SERVICES_OPTIONS.filter(() => draw(4) > 0) }
        return anyAnswer(q, draw)
      }),
    )
    const longest = Math.max(...[...sets, ...troubled].map(count))
    expect(longest).toBe(MOST_QUESTIONS)
  })

  it('always ends, with how to reach the owner among the answers', () => {
    for (const answers of sets) {
      const { current, needed } = replay(script, answers)
      expect([current, needed]).toEqual([null, []])
      expect(answers.contact).toBeDefined()
    }
  })

  it('never leaves a contradiction unasked because the conversation is long', () => {
    const draw = draws(5)
    let contradictions = 0
    for (let n = 0; n < 1500; n += 1) {
      const fixed: Readonly<Record<string, unknown>> = {
        dangers: DANGERS_OPTIONS.filter((d) => d !== 'matte' && draw(3) === 0),
        services: SERVICES_OPTIONS.filter((s) => s === 'paint' || draw(4) > 0),
        year: 2001 + draw(4),
        'cloth-test': 'colour',
        finish: 'metallic',
        'paint-history': 'part',
        'film-age': 60,
      }
      const answers = walk(script, (q) =>
        q.id in fixed ? { value: fixed[q.id] } : anyAnswer(q, draw),
      )
      if ('film-age' in answers) expect(answers['year-check']).toBeDefined()
      if (!('finish' in answers && 'cloth-test' in answers)) continue
      contradictions += 1
      expect(answers['system-check']).toBeDefined()
    }
    expect(contradictions).toBeGreaterThan(200)
  })
})
