import type { Catalogue } from '../render'
import { errorsIntakeEn } from './errors-intake'
import { estimateWords } from './estimate'
import { format } from './format'
import { messageWords } from './messages'
import { openWords, refuseWords } from './open'
import { pages } from './pages'
import { panels } from './panels'
import { problemWords } from './problems'
import { questionsEn } from './questions'
import { repliesEn } from './replies'
import { cautionWords as riskCautionWords, riskWords } from './risks'

/** Every English sentence by key. */
export const english: Catalogue = {
  ...errorsIntakeEn,
  ...problemWords,
  ...questionsEn,
  ...repliesEn,
  ...estimateWords,
  ...riskWords,
  ...riskCautionWords,
  ...openWords,
  ...refuseWords,
  ...messageWords,
  ...pages,
  ...panels,
  ...format,
}
