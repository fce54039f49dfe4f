import type { Catalogue } from '../render'
import { stepCautionWords } from './cautions'
import { errorsIntakeEn } from './errors-intake'
import { estimateWords } from './estimate'
import { eventWords } from './events'
import { format } from './format'
import { historyWords } from './history'
import { messageWords } from './messages'
import { openWords, refuseWords } from './open'
import { pages } from './pages'
import { panels } from './panels'
import { problemWords } from './problems'
import { questionsEn } from './questions'
import { reasonWords } from './reasons'
import { repliesEn } from './replies'
import { cautionWords as riskCautionWords, riskWords } from './risks'
import { stepWords } from './steps'

/** Every English sentence by key. */
export const english: Catalogue = {
  ...errorsIntakeEn,
  ...problemWords,
  ...questionsEn,
  ...repliesEn,
  ...estimateWords,
  ...reasonWords,
  ...stepWords,
  ...eventWords,
  ...stepCautionWords,
  ...riskWords,
  ...riskCautionWords,
  ...openWords,
  ...refuseWords,
  ...messageWords,
  ...historyWords,
  ...pages,
  ...panels,
  ...format,
}
