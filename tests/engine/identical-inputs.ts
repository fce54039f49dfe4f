import type { Answers } from '../../src/intake/answers'
import type { EstimateInput } from '../../src/quote/estimate'
import { DEFAULT_PROFILE, engineSettings } from '../../src/quote/studio-profile'
import { zoneOf } from '../../src/routes/zone'
import { answerSets } from '../corpus/answer-sets'

const HOW_MANY = 30
const NOW = 1_790_000_000_000
const YEAR = 365 * 86_400_000

/** Invented readings: a thin bonnet, an odd door, a roof that was painted twice. */
const READINGS: EstimateInput['readings'] = [
  { panel: 'bonnet', kind: 'panel', values: [96, 101, 92, 88, 104], probe: 'dual' },
  { panel: 'door-fl', kind: 'panel', values: [131, 240, 128, 133, 129], probe: 'magnetic' },
  { panel: 'roof', kind: 'panel', values: [262, 271, 255, 268, 280], probe: 'dual' },
]

const ADJUSTMENTS: EstimateInput['adjustments'] = [
  { kind: 'discount', amount: 1_500, why: 'comes back' },
  { kind: 'add', step: 'badge', name: 'Fit a badge', minutes: 25, why: 'asked for' },
  { kind: 'people', people: 2, why: 'a second hand is free' },
]

/** Answer sets spread over the whole corpus; every third with readings, every fourth adjusted. */
export const identicalInputs = (): readonly EstimateInput[] => {
  const sets = answerSets()
  const zone = zoneOf(DEFAULT_PROFILE.timeZone, NOW, NOW + YEAR)
  const settings = engineSettings(DEFAULT_PROFILE, 1, zone)
  return Array.from({ length: HOW_MANY }, (_, i): EstimateInput => {
    const answers: Answers = sets[Math.floor((i * sets.length) / HOW_MANY)] ?? {}
    return {
      answers,
      settings,
      today: '2026-09-21',
      readings: i % 3 === 0 ? READINGS : [],
      adjustments: i % 4 === 0 ? ADJUSTMENTS : [],
    }
  })
}
