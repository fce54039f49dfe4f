import type { Words } from './render'

/** A thing to have in hand by its item: from the steps (`material:clay`), or one of the studio's own. */
export const wantedText = (item: string, words: Words): string => {
  const [from, id] = item.split(':')
  if (id === undefined) return words.say('wanted.own')
  const key = from === 'material' ? `material.${id}` : `wanted.${item.replace(':', '.')}`
  return words.has(key) ? words.say(key) : words.say('wanted.own')
}
