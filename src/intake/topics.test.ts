import { describe, expect, it } from 'vitest'
import { answerSets } from '../../tests/corpus/answer-sets'
import { shows } from '../../tests/corpus/levels'
import { questionsEn } from '../words/en/questions'
import { script } from './script'

/**
 * What a careful bench wants to know of a car before it names a price, and where the script asks it:
 * a question, or one of its options. Common practice, no source.
 */
const TOPICS: Readonly<Record<string, readonly (string | readonly [string, ...string[]])[]>> = {
  'the eight dangerous things': [
    [
      'dangers',
      'fresh-paint',
      'film',
      'peeling',
      'matte',
      'wet',
      'growth',
      'soft-roof',
      'not-driving',
    ],
  ],
  'what vehicle it is, how large, how old': ['body', 'size', 'year', 'vin'],
  'who decides about it': [['authority', 'mine', 'family-or-company', 'not-mine']],
  'consent of a lessor or lender': [['authority', 'lease-finance'], 'owner-consent'],
  'limits of a lease or a warranty': [['terms', 'return-terms', 'paint-warranty']],
  'who pays': [['payer', 'me', 'insurer', 'other']],
  'an open claim or dispute': ['claim'],
  'insured to be driven': ['insured', 'drive-consent'],
  'since when it is owned, and by how many before': ['owner-since', ['one-owner', 'one', 'many']],
  'keys, alarm and battery': [
    ['keys', 'one-key', 'weak-battery', 'code-needed'],
    ['belongings', 'alarm-trouble'],
    ['drive-state', 'flat-battery'],
  ],
  'whether it drives, steers and brakes': [
    ['drive-state', 'no-start', 'weak-brakes', 'no-steering', 'flat-tyres'],
  ],
  'warning lights, airbag and belts': [['warning-lights', 'airbag', 'belt', 'brakes']],
  'modifications and ride height': [
    ['ride', 'lowered', 'raised'],
    ['changes', 'body-kit', 'air-ride'],
    'spacers',
  ],
  'added wiring': [
    ['changes', 'added-wiring'],
    ['belongings', 'added-wiring', 'dash-camera'],
  ],
  'the paint code': ['paint-code'],
  'painted again: where and when': [
    ['paint-history', 'original', 'part', 'all'],
    'respray-panels',
    'fresh-paint-weeks',
  ],
  'earlier polishing': ['polished-before'],
  'coating, silicone, scratch remover, and when': [
    ['earlier-protection', 'wax', 'coating', 'silicone', 'scratch-remover', 'unknown-bottle'],
    'protection-when',
  ],
  'earlier readings': ['readings-before', 'readings-text'],
  'dark paint, paint without lacquer, sparkle': [
    ['colour', 'black', 'dark', 'red-orange-yellow'],
    ['cloth-test', 'colour', 'clean', 'part'],
    ['finish', 'solid', 'metallic'],
  ],
  'soft paint, and what a gauge cannot read': [
    ['hard-soft', 'marks-easily'],
    ['panel-material', 'aluminium', 'plastic-composite'],
  ],
  'defects by what one sees': [
    ['defects', 'haze', 'wash-marks', 'nail-scratch', 'chips', 'dull', 'etching', 'burn-through'],
    ['defects', 'overspray', 'fallout', 'rust', 'scratches'],
    'peel-where',
  ],
  'film and wrap: place, age, state, begun by whom and with what, on what': [
    'film-kind',
    'film-where',
    'film-age',
    ['film-state', 'cracked', 'started'],
    ['film-started-with', 'hand', 'heat', 'blade', 'solvent'],
    ['film-over', 'repaint', 'bumper'],
  ],
  'water: cabin, boot, luggage space in front': [
    ['wet-where', 'front-floor', 'boot', 'front-luggage', 'headliner', 'seats'],
    ['wet-depth', 'surface', 'soaked', 'standing'],
  ],
  'where water came from, flood and sewage': [
    ['wet-source', 'repaired', 'open', 'unknown', 'flood', 'sewage'],
  ],
  'electrics since it got wet': ['wet-electrics'],
  'mould: where and how large': [
    ['growth', 'mould-hard', 'mould-textile', 'mould-headliner', 'mould-under-carpet'],
    ['mould-area', 'coin', 'larger'],
  ],
  rodents: [['growth', 'nest', 'droppings']],
  'sensitive people': ['sensitive-people'],
  'what was spilled': [['cabin-marks', 'milk', 'urine', 'vomit', 'stains'], 'spilled'],
  'smoke, pets, children': [
    ['cabin-marks', 'smoke', 'pet-hair'],
    ['belongings', 'child-seats'],
  ],
  'soft roof: cloth, vinyl, window, how it was folded': [
    ['roof-kind', 'cloth', 'vinyl'],
    ['roof-state', 'seams', 'plastic-cloudy', 'folded-wet', 'stiff'],
  ],
  'roof lining': [['headliner', 'loose']],
  'trim: sticky, wood, clips': [['trim', 'sticky', 'wood', 'brittle-clips']],
  'kinds of leather': [['leather', 'smooth', 'perforated', 'suede', 'cracked', 'dyed']],
  'wheels: finish, locking key, stickers, kerbs': [
    ['wheels', 'painted', 'polished-bare', 'powder', 'chrome', 'cracked'],
    ['locking-key', 'have', 'missing'],
    ['wheel-marks', 'stickers', 'kerbed', 'caliper-letters'],
  ],
  'sills and jacking points': [['jacking', 'sound', 'rusty']],
  'tinted and heated glass': [['tint', 'film-on-glass', 'heated-glass', 'film-on-screen']],
  'high voltage': [['engine-kind', 'hybrid', 'electric']],
  'patina, marks and a smell to keep': [
    ['patina', 'marks', 'patina', 'smell', 'signatures'],
    'keep',
  ],
  'how it is used, kept, washed afterwards, how far it has gone': [
    'use',
    ['kept-washed', 'brush', 'hand'],
    'mileage',
  ],
  'how far to go, and the one thing that must be better': [
    ['wish', 'preserve', 'improve', 'show'],
    'best-thing',
  ],
  'deadline, budget, dates': ['deadline', 'budget', 'free-dates'],
  'work of other trades, a repaint planned': [
    ['other-work', 'repaint', 'dents', 'glass', 'upholstery', 'workshop'],
  ],
  'place of work: studio or the owner’s, power, water, roof': [
    ['where-car', 'bring', 'collect', 'at-home'],
    ['place-has', 'power', 'water', 'roof', 'level'],
  ],
  photos: ['photos'],
  'how to reach the owner': ['contact'],
}

/** What nobody can know, and what they can see or try instead. */
const TRIED: readonly (readonly [question: string, said: RegExp])[] = [
  ['cloth-test', /cloth/],
  ['dangers', /ridge/],
  ['film-kind', /ridge/],
  ['dangers', /[Ww]et the patch/],
  ['peel-where', /Wet the mark/],
  ['panel-material', /magnet in a soft cloth/],
  ['wet-depth', /kitchen paper.*30 seconds/],
  ['damp-check', /kitchen paper.*30 seconds/],
  ['mould-area', /coin beside it, not on it/],
  ['locking-key', /boot|glove box/],
  ['finish', /sun/],
]

/** What could hurt the car or somebody; each may only stand where it is advised against. */
const HARMFUL =
  /scratch at|scrape|solvent|peel|pull|lift|unplug|start the|vacuum|sweep|knife|press on/i
const ADVISED_AGAINST = /\b(not|never|without|only look|leave)\b/i

const wordsOf = (id: string): string =>
  Object.entries(questionsEn)
    .filter(([key]) => key.startsWith(`q.${id}.`))
    .map(([, text]) => text)
    .join(' ')

describe('what a careful bench asks', () => {
  const seen = new Map<string, Set<string>>()
  for (const answers of answerSets())
    for (const q of script.questions) {
      const answer = answers[q.id]
      if (answer === undefined) continue
      const levels = seen.get(q.id) ?? new Set()
      for (const level of shows(q, answer)) levels.add(level)
      seen.set(q.id, levels)
    }

  it.each(Object.entries(TOPICS))('%s', (_topic, places) => {
    for (const place of places) {
      const [id, ...options] = typeof place === 'string' ? [place] : place
      const q = script.questions.find((each) => each.id === id)
      expect(q?.id, id).toBe(id)
      // Not only written down: somebody is asked it, and somebody answers with each of these.
      expect(seen.get(id)?.size, id).toBeGreaterThan(0)
      for (const option of options) expect([...(seen.get(id) ?? [])]).toContain(option)
    }
  })

  it('leaves no question without a topic it serves', () => {
    const named = new Set(
      Object.values(TOPICS).flatMap((places) =>
        places.map((p) => (typeof p === 'string' ? p : p[0])),
      ),
    )
    const rest = script.questions.filter((q) => !named.has(q.id) && !q.check).map((q) => q.id)
    expect(rest).toEqual(['services', 'cabin-state'])
  })

  it.each(TRIED)('%s asks what can be seen or tried', (id, said) => {
    expect(wordsOf(id)).toMatch(said)
  })

  it('never asks anybody to do what could hurt the car or them', () => {
    for (const q of script.questions) {
      const how = questionsEn[`q.${q.id}.how`] ?? ''
      for (const sentence of how.split(/(?<=[.?!;:]) /))
        if (HARMFUL.test(sentence))
          expect([q.id, sentence]).toEqual([q.id, expect.stringMatching(ADVISED_AGAINST)])
    }
  })
})
