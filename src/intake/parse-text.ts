import { err, ok, type Result } from '../kernel/result'
import { type Issue, issue } from './issue'

export const MOST_TEXT = 2000

// Control characters except the newline, and the marks that turn the reading direction of what
// stands after them (Unicode Bidirectional Algorithm, UAX #9): they could disguise a later sentence.
const REFUSED = /(?!\n)\p{Cc}|[\u202a-\u202e\u2066-\u2069]/u
const LONE_SURROGATE = /\p{Surrogate}/u

/**
 * A text as it is kept: newlines and tabs made plain, trimmed, NFC (Unicode Annex #15), at most `most` code
 * points; empty is null. Errors: ERR_NOT_TEXT, ERR_TEXT_LONG (params most), ERR_CONTROL_CHARACTER.
 */
export const parseText = (
  json: unknown,
  most = MOST_TEXT,
  pointer = '/value',
): Result<string | null, Issue[]> => {
  if (typeof json !== 'string') return err([issue('ERR_NOT_TEXT', pointer)])
  const text = json.replace(/\r\n?/g, '\n').replaceAll('\t', ' ').trim().normalize('NFC')
  const issues: Issue[] = []
  if ([...text].length > most) issues.push(issue('ERR_TEXT_LONG', pointer, { most }))
  if (REFUSED.test(text) || LONE_SURROGATE.test(text))
    issues.push(issue('ERR_CONTROL_CHARACTER', pointer))
  return issues.length > 0 ? err(issues) : ok(text === '' ? null : text)
}
