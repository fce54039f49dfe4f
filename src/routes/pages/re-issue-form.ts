import { AFTER_NO } from '../../jobsheet/polish-word'
import type { ReIssueWord } from '../acts/re-issuing'
import { invalid } from '../http/problem'
import type { Form } from '../route'
import { textOf } from './page'

/** The word on a smaller result as typed. Throws 422 where neither yes nor no was chosen. */
export const reIssueWord = (form: Form): ReIssueWord => {
  const decision = form.get('decision')
  if (decision !== 'go-on' && decision !== 'no')
    throw invalid([{ pointer: '/decision', code: 'ERR_REQUIRED' }])
  return {
    decision,
    instead: AFTER_NO.find((each) => each === form.get('instead')),
    name: textOf(form, 'name', 200),
  }
}
