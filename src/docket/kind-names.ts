export const PROBES = ['magnetic', 'eddy', 'dual', 'ultrasonic'] as const
export const LOCKING_KEYS = ['with-car', 'not-there', 'none-needed'] as const
/** How an owner's word reached the bench. */
export const HEARD = ['here', 'phone', 'written'] as const
export const GOES_BEFORE = ['wheel', 'trim'] as const
export const RECORDED = ['coating-batch', 'light', 'temperature', 'humidity', 'fuel-out'] as const

/**
 * Lines a bench device may write without a signal. Their names stand apart from their shapes
 * (`bench-kinds.ts`), whose checker a browser need not load.
 */
export const BENCH_KINDS = [
  'checked-in',
  'began',
  'broke-off',
  'done',
  'reading',
  'unreadable',
  'polished',
  'allowed',
  'found',
  'removed',
  'refitted',
  'checked',
  'struck',
  'noted',
  'wanted',
  'supplied',
  'gauge-checked',
  'timer-set',
  'film-answered',
  'crew-changed',
  'stayed-overnight',
  'recorded',
] as const
export type BenchKind = (typeof BENCH_KINDS)[number]

export const isBenchKind = (kind: string): kind is BenchKind =>
  (BENCH_KINDS as readonly string[]).includes(kind)
