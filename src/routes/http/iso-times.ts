const TIMES = new Set(['at', 'sentAt', 'lastAt', 'openedAt', 'submittedAt', 'changedAt'])

/** Data as the API shows it: every moment kept as UTC milliseconds becomes ISO 8601. */
export const isoTimes = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(isoTimes)
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [
      key,
      typeof each === 'number' && TIMES.has(key) ? new Date(each).toISOString() : isoTimes(each),
    ]),
  )
}
