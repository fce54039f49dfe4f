import { ageAs } from '../../intake/facts/age'
import { is } from '../../intake/facts/is'
import type { Phrase, Question } from '../../intake/question'
import { dangers } from '../../intake/questions/dangers'
import { services } from '../../intake/questions/services'
import { wish } from '../../intake/questions/wish'
import type { Reader } from '../../intake/reader'
import type { Context } from '../context'

export { is }

/** True when a list answer holds at least one of the wanted options. */
export const has = <T extends string>(
  r: Reader,
  q: Question<readonly T[]>,
  ...wanted: readonly NoInfer<T>[]
): boolean => r.as(q, (picked) => picked.some((v) => wanted.includes(v))) ?? false

/** No params when it holds, null when it does not. */
export const fires = (holds: boolean): Phrase['params'] | null => (holds ? {} : null)

export const atLeast = (r: Reader, c: Context, years: number): boolean =>
  ageAs(r, c.nowYear, (a) => a >= years) ?? false

export const atMost = (r: Reader, c: Context, years: number): boolean =>
  ageAs(r, c.nowYear, (a) => a <= years) ?? false

/** The owner wants paint that may be polished to look better than it does; matte never may. */
export const polishing = (r: Reader): boolean =>
  has(r, services, 'paint') && is(r, wish, 'improve', 'show') && !has(r, dangers, 'matte')
