import { describe, expect, it } from 'vitest'
import { DEFAULT_PROFILE, studioProfile } from '../../quote/studio-profile'
import { english } from '../../words/en'
import { mayWord, profileFaults } from './profile-faults'

const codes = (more: object): readonly string[] =>
  profileFaults(studioProfile.parse({ ...DEFAULT_PROFILE, ...more })).map((f) => f.code)

describe('profileFaults', () => {
  it('holds thresholds inside the hard limits', () => {
    // A car maker's bulletin says that 1.4 mil (35.56 µm) of clear must remain; see constants.ts.
    expect(codes({ limits: { floorClear: 35.56, jobCap: 3 } })).toEqual([])
    expect(codes({ limits: { floorClear: 35.5 } })).toEqual(['ERR_HARD_LIMIT'])
    expect(codes({ limits: { lifetimeCap: 12.8 } })).toEqual(['ERR_HARD_LIMIT'])
    expect(codes({ limits: { __proto__x: 1 } })).toEqual(['ERR_UNKNOWN_FIELD'])
  })

  it('takes words only for what may be worded, with the places and the link they need', () => {
    const key = 'message.look-over'
    const standard = english[key] ?? ''
    expect(codes({ wording: { [key]: `So to say: ${standard}` } })).toEqual([])
    expect(codes({ wording: { [key]: 'With {something} else: {link}' } })).toEqual(['ERR_PLACES'])
    expect(codes({ wording: { 'message.quote': 'Your quote is ready.' } })).toEqual(['ERR_PLACES'])
    expect(codes({ wording: { 'message.quote': 'Here: {link}' } })).toEqual([])
    expect(codes({ wording: { 'caution.lead': 'No worry.' } })).toEqual(['ERR_UNKNOWN_FIELD'])
    expect(Object.keys(english).filter((k) => mayWord(k) && k.startsWith('caution.'))).toEqual([])
  })

  it('knows the steps of the catalogue', () => {
    expect(codes({ steps: { wash: { pace: 1.2 } } })).toEqual([])
    expect(codes({ steps: { 'wash-twice': { off: true } } })).toEqual(['ERR_UNKNOWN_STEP'])
  })
})
