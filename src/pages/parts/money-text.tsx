import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'

/** Minor units to the last digit, in the studio's currency and locale. */
export const money = (words: Words, minor: number): string =>
  words.say('format.money', { v: minor })

/** Minor units as a whole amount, for ranges that carry no cents. */
export const roundMoney = (words: Words, minor: number): string =>
  words.say('format.round', { v: minor })

/** Minor units as one types them: 1234 with two places is "12.34". */
export const fromMinor = (minor: number, exponent: number): string => {
  const digits = String(Math.abs(minor)).padStart(exponent + 1, '0')
  const cut = digits.length - exponent
  return exponent === 0 ? digits : `${digits.slice(0, cut)}.${digits.slice(cut)}`
}

export const hours = (words: Words, minutes: number): string =>
  words.say('format.time', { v: minutes })

export const date = (words: Words, day: string): string => words.say('format.date', { v: day })

export const clock = (words: Words, minute: number): string =>
  words.say('format.clock', { v: minute })

/** An amount that never breaks across lines. */
export const MoneyText: FC<{
  readonly words: Words
  readonly minor: number
  readonly round?: boolean
}> = ({ words, minor, round }) => (
  <span class="figure">{round ? roundMoney(words, minor) : money(words, minor)}</span>
)
