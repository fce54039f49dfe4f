import { describe, expect, it } from 'vitest'
import { openPoints } from '../../quote/open-points'
import { refusals } from '../../quote/refusals'
import { risks } from '../../quote/risks'
import { openWords, refuseWords } from './open'
import { cautionWords, riskWords } from './risks'

const sorted = (keys: Iterable<string>) => [...keys].sort()
const keysOfRisks = risks.flatMap(({ id, decision }) => [
  `risk.${id}`,
  `risk.${id}.means`,
  `risk.${id}.bench`,
  ...(decision ? [`risk.${id}.decision`] : []),
])

describe('words of notes, refusals and checks', () => {
  it('has every text of every note and no text of none', () => {
    expect(sorted(Object.keys(riskWords))).toEqual(sorted(keysOfRisks))
  })

  it('has every text of every refusal and check and no other', () => {
    const wanted = refusals.flatMap(({ id }) => [`refuse.${id}`, `refuse.${id}.turn`])
    expect(sorted(Object.keys(refuseWords))).toEqual(sorted(wanted))
    expect(sorted(Object.keys(openWords))).toEqual(sorted(openPoints.map(({ id }) => `open.${id}`)))
  })

  it('has every caution a note carries and no other', () => {
    const wanted = new Set(risks.flatMap((r) => (r.caution ? [`caution.${r.caution}`] : [])))
    expect(sorted(Object.keys(cautionWords))).toEqual(sorted(wanted))
  })

  it.each(Object.entries(cautionWords))('%s defers to who has the last word', (_key, text) => {
    expect(text).toMatch(/\b(label|makers?|local|codes?|rules|licensed|qualified)\b/i)
  })

  // EPA 402-K-01-001, ch. 3: N-95 respirator, gloves and eye protection when mould is disturbed.
  it.each(risks.filter((r) => r.id.startsWith('mould-')).map((r) => r.id))(
    '%s asks for mask, gloves and eye protection and says the guideline is for buildings',
    (id) => {
      const said = `${riskWords[`risk.${id}.means`]} ${riskWords[`risk.${id}.bench`]}`
      expect(said).toMatch(/N-95 mask or equivalent/)
      expect(said).toMatch(/gloves/)
      expect(said).toMatch(/eye protection/)
      expect(said).toMatch(/own estimate/)
      expect(said).toMatch(/written for buildings/)
    },
  )

  // EPA 402-K-02-003: dry water-damaged things within 24-48 hours.
  it('names the drying time of the guideline and what it is written for', () => {
    expect(riskWords['risk.soaked.means']).toMatch(/buildings says to dry within 24–48 hours/)
  })

  it('gives a note one short title and promises nothing', () => {
    for (const { id } of risks) {
      const title = riskWords[`risk.${id}`] ?? ''
      expect(title.length, id).toBeLessThanOrEqual(90)
      expect(title, id).toMatch(/[.]$/)
      expect(title.slice(0, -1), id).not.toMatch(/[.!?]\s/)
      const means = riskWords[`risk.${id}.means`] ?? ''
      expect(means, id).not.toMatch(/guarantee|promise|like new|always works|we will remove/i)
      expect(means.length, id).toBeLessThanOrEqual(400)
    }
  })

  it('says to the owner what every decision is', () => {
    for (const { id, severity, decision } of risks) {
      if (severity === 'decide') expect(decision, id).toBe(true)
      if (!decision) continue
      expect(riskWords[`risk.${id}.decision`], id).toMatch(
        /^(Accept|Agree|Ask|Choose|Decide|Get|Look|Say|Tell)/,
      )
    }
  })

  it('leaves no placeholder without a value: none of these notes carries one', () => {
    for (const text of Object.values({
      ...riskWords,
      ...cautionWords,
      ...refuseWords,
      ...openWords,
    }))
      expect(text).not.toMatch(/[{}]/)
  })
})
