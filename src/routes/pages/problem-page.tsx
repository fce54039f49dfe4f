import { assetsOf, type Manifest } from '../../pages/assets'
import { PROBLEM_KINDS, type ProblemKind, ProblemPage } from '../../pages/problem-page'
import { toHtml } from '../../pages/to-html'
import type { Words } from '../../words/render'
import { SECURITY_HEADERS } from '../http/headers'
import { type Problem, STATUS } from '../http/problem'

const kindOf = (problem: Problem): ProblemKind => {
  const same = PROBLEM_KINDS.find((k) => k === problem.code)
  if (same) return same
  if (problem.code === 'not-yours') return 'unknown'
  return problem.code === 'forbidden-origin' ? 'not-allowed' : 'not-now'
}

/** A problem as a page: what went wrong, and what to do now. */
export const respondPageProblem = (
  problem: Problem,
  requestId: string,
  words: Words,
  manifest: Manifest,
): Response => {
  const headers = new Headers(SECURITY_HEADERS)
  headers.set('content-type', 'text/html; charset=utf-8')
  headers.set('cache-control', 'no-store')
  headers.set('x-request-id', requestId)
  if (problem.retryAfter !== undefined) headers.set('retry-after', String(problem.retryAfter))
  const possible = problem.detail ? [words.say(problem.detail.key, problem.detail.params)] : []
  const html = toHtml(
    <ProblemPage
      frame={{ words, assets: assetsOf(manifest), studioName: '' }}
      kind={kindOf(problem)}
      possible={possible}
      requestId={requestId}
      {...(problem.retryAfter === undefined ? {} : { retryAfterSeconds: problem.retryAfter })}
    />,
  )
  return new Response(html, { status: STATUS[problem.code], headers })
}
