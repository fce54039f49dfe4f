import type { Words } from '../../words/render'

/** A chance (0 to 1) as one would say it: "in about 6 of 10 cases", never a percentage. */
export const chanceWords = (words: Words, chance: number): string => {
  if (chance < 0.05) return words.say('page.chance.hardly')
  if (chance > 0.95) return words.say('page.chance.nearly')
  const n = Math.min(9, Math.max(1, Math.round(chance * 10)))
  return words.say('page.chance.of-ten', { n })
}
