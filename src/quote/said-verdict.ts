import type { PaintAssessment } from './paint'

/** The verdict as it is said: of a panel nobody has read, only that it is not measured yet. */
export const saidVerdict = (p: PaintAssessment['panels'][number]): string =>
  p.verdict === 'another-set' && p.totalMean === null ? 'not-measured' : p.verdict
