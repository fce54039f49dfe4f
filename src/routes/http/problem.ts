/** One fault of the input: where it stands (JSON Pointer), a code, and what to do about it. */
export type Fault = {
  readonly pointer: string
  readonly code: string
  readonly params?: Readonly<Record<string, string | number | readonly string[]>>
}

/** Every way a request can end without success; the status of each stands in {@link STATUS}. */
export const PROBLEMS = [
  'malformed',
  'signed-out',
  'forbidden-origin',
  'not-allowed',
  'not-yours',
  'unknown',
  'not-now',
  'stale',
  'too-large',
  'wrong-type',
  'invalid',
  'key-reused',
  'key-running',
  'if-match-missing',
  'too-many',
  'away',
  'fault',
] as const
export type ProblemCode = (typeof PROBLEMS)[number]

export const STATUS: Readonly<Record<ProblemCode, number>> = {
  malformed: 400,
  'signed-out': 401,
  'forbidden-origin': 403,
  'not-allowed': 403,
  'not-yours': 404,
  unknown: 404,
  'not-now': 409,
  stale: 412,
  'too-large': 413,
  'wrong-type': 415,
  invalid: 422,
  'key-reused': 422,
  'key-running': 409,
  'if-match-missing': 428,
  'too-many': 429,
  away: 503,
  fault: 500,
}

/** An expected end without success. `detail` is a key of the words; `more` is shown as data. */
export class Problem extends Error {
  readonly code: ProblemCode
  readonly faults: readonly Fault[]
  readonly detail: { readonly key: string; readonly params?: Fault['params'] } | undefined
  readonly more: Readonly<Record<string, unknown>>
  readonly retryAfter: number | undefined

  constructor(
    code: ProblemCode,
    given: {
      readonly faults?: readonly Fault[]
      readonly detail?: { readonly key: string; readonly params?: Fault['params'] }
      readonly more?: Readonly<Record<string, unknown>>
      readonly retryAfter?: number
    } = {},
  ) {
    super(code)
    this.name = 'Problem'
    this.code = code
    this.faults = given.faults ?? []
    this.detail = given.detail
    this.more = given.more ?? {}
    this.retryAfter = given.retryAfter
  }
}

export const invalid = (faults: readonly Fault[]): Problem => new Problem('invalid', { faults })

/** More characters than there is room for; nothing is ever cut off instead. */
export const tooLong = (pointer: string, typed: string, most: number): Fault => ({
  pointer,
  code: 'ERR_TOO_LONG',
  params: { most, typed: typed.length },
})
