import { question } from '../question'

/** The year the conversation was begun in. Never asked: the rim supplies it, so that the script stays free of a clock. */
export const begunYear = question<number>({
  id: 'begun-year',
  topic: 'car',
  stage: 'first',
  kind: 'year',
})
