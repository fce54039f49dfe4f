const SPACES = /[\s\u00a0\u202f'’]/g
const GROUPED = /^\d{1,3}(?:\d{3})*$/

const groupsHold = (text: string, mark: string): boolean => {
  const [first = '', ...rest] = text.split(mark)
  return GROUPED.test(first) && first.length <= 3 && rest.every((g) => /^\d{3}$/.test(g))
}

/**
 * A number as people of any country type it (`12 000`, `12,5`, `1.250,50`, `12,000`), as digits with
 * a plain point; undefined when it is something else. A single mark before exactly three digits
 * parts thousands, unless numbers here have three decimals.
 */
export const typedNumber = (typed: string, decimals = 2): string | undefined => {
  const text = typed.replace(SPACES, '')
  const sign = text.startsWith('-') ? '-' : ''
  const bare = text.slice(sign.length)
  if (!/^\d[\d.,]*$/.test(bare)) return undefined
  const marks = bare.replace(/\d/g, '')
  const last = marks.at(-1)
  if (last === undefined) return sign + bare
  const at = bare.lastIndexOf(last)
  const after = bare.slice(at + 1)
  const alone = marks.length === 1
  const grouping =
    alone && decimals !== 3
      ? after.length === 3 && /^[1-9]\d{0,2}$/.test(bare.slice(0, at))
      : marks.length > 1 && [...marks].every((m) => m === last)
  if (grouping) return groupsHold(bare, last) ? sign + bare.replaceAll(last, '') : undefined
  const whole = bare.slice(0, at)
  const other = last === ',' ? '.' : ','
  if (whole.includes(last) || (whole.includes(other) && !groupsHold(whole, other))) return undefined
  return after === '' ? undefined : `${sign}${whole.replaceAll(other, '')}.${after}`
}
