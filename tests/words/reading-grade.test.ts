import { fleschKincaid } from 'flesch-kincaid'
import { syllable } from 'syllable'
import { describe, expect, it } from 'vitest'
import { english } from '../../src/words/en'

/** The sentences of a word entry, with something short in every gap. */
const textOf = (entry: unknown): string =>
  (typeof entry === 'string' ? entry : Object.values(entry as object).join(' ')).replace(
    /\{[^}]*\}/g,
    'one',
  )

/**
 * US school grade by Flesch and Kincaid (Kincaid, Fishburne, Rogers and Chissom 1975), as the library
 * of that name computes it; null where there are too few words to judge.
 */
const gradeOf = (text: string): number | null => {
  const sentences = text.split(/[.!?:;]+(?:\s|$)/).filter((s) => s.trim() !== '')
  const words = text.match(/[A-Za-z'’]+/g) ?? []
  if (words.length < 6) return null
  return fleschKincaid({
    sentence: sentences.length,
    word: words.length,
    syllable: words.reduce((n, word) => n + syllable(word), 0),
  })
}

/** What a customer reads, by the beginning of its key; the bench's own lines are left out. */
const READ_BY_CUSTOMERS =
  /^(?:q|reply|error|expect|refuse|aftercare|photo|page\.(?:quote|range|enquiry|day|record|data))\.|^risk\.[^.]+(?:\.means|\.decision)?$/

const graded = Object.entries(english)
  .filter(([key]) => READ_BY_CUSTOMERS.test(key))
  .flatMap(([key, entry]) => {
    const grade = gradeOf(textOf(entry))
    return grade === null ? [] : [{ key, grade }]
  })

describe('what a customer reads', () => {
  // Anchors of the scale itself, computed by hand from the formula: 0.39 × words per sentence
  // + 11.8 × syllables per word − 15.59.
  it('is measured by the published formula', () => {
    expect(gradeOf('The cat sat on the mat today.')).toBeCloseTo(
      0.39 * 7 + 11.8 * (8 / 7) - 15.59,
      6,
    )
  })

  it('is at the grade of primary school on the whole, and nowhere above the tenth', () => {
    expect(graded.length).toBeGreaterThan(500)
    const mean = graded.reduce((sum, { grade }) => sum + grade, 0) / graded.length
    expect(mean).toBeLessThan(5)
    expect(graded.filter(({ grade }) => grade > 10).map(({ key }) => key)).toEqual([])
  })

  it('is seldom above the eighth', () => {
    const hard = graded.filter(({ grade }) => grade > 8).length
    expect(hard / graded.length).toBeLessThan(0.01)
  })
})
