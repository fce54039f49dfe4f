import type { Words } from '../../words/render'
import { sayFaults } from '../../words/say-faults'
import type { Outcome } from '../route'
import { SECURITY_HEADERS } from './headers'
import { Problem, STATUS } from './problem'

const base = (requestId: string): Headers => {
  const headers = new Headers(SECURITY_HEADERS)
  headers.set('cache-control', 'no-store')
  headers.set('x-request-id', requestId)
  return headers
}

/** A successful outcome as a response. */
export const respond = (o: Outcome, requestId: string): Response => {
  const headers = base(requestId)
  for (const [name, value] of Object.entries(o.headers ?? {})) headers.set(name, value)
  for (const cookie of o.cookies ?? []) headers.append('set-cookie', cookie)
  if (o.to !== undefined) {
    headers.set('location', o.to)
    return new Response(null, { status: o.status, headers })
  }
  if (o.html !== undefined) {
    headers.set('content-type', 'text/html; charset=utf-8')
    // As bytes: Node looks a string of a hundred kilobytes through twice before it sends it.
    return new Response(new TextEncoder().encode(o.html), { status: o.status, headers })
  }
  if (o.text !== undefined) {
    headers.set('content-type', o.text.mime)
    return new Response(o.text.body, { status: o.status, headers })
  }
  if (o.bytes !== undefined) {
    headers.set('content-type', o.bytes.mime)
    headers.set('content-security-policy', "default-src 'none'; sandbox")
    headers.set('content-disposition', 'inline')
    return new Response(o.bytes.body as BodyInit, { status: o.status, headers })
  }
  if (o.stream !== undefined) {
    headers.set('content-type', o.stream.mime)
    headers.set('content-disposition', `attachment; filename="${o.stream.name}"`)
    return new Response(o.stream.body, { status: o.status, headers })
  }
  if (o.json === undefined) return new Response(null, { status: o.status, headers })
  headers.set('content-type', 'application/json; charset=utf-8')
  return new Response(JSON.stringify(o.json), { status: o.status, headers })
}

/** A name that may be said back: an unknown field's own name could be anything. */
const NAMED = /^[\w.~[\]-]{1,64}$/

/** Faults that point at most as far as names go that may be said back. */
const placed = <T extends { readonly pointer: string }>(faults: readonly T[]): readonly T[] =>
  faults.map((fault) => {
    const parts = fault.pointer.split('/')
    const odd = parts.findIndex((part, i) => i > 0 && !NAMED.test(part))
    return odd < 0 ? fault : { ...fault, pointer: parts.slice(0, odd).join('/') }
  })

/** An expected end without success, as problem details (RFC 9457). */
export const respondProblem = (problem: Problem, requestId: string, words: Words): Response => {
  const status = STATUS[problem.code]
  const headers = base(requestId)
  headers.set('content-type', 'application/problem+json')
  if (problem.retryAfter !== undefined) headers.set('retry-after', String(problem.retryAfter))
  if (status === 401) headers.set('www-authenticate', 'Bearer')
  const body = {
    type: 'about:blank',
    title: words.say(`problem.${problem.code}`),
    status,
    code: problem.code,
    ...(problem.detail ? { detail: words.say(problem.detail.key, problem.detail.params) } : {}),
    ...(problem.faults.length > 0 ? { errors: placed(sayFaults(problem.faults, words)) } : {}),
    ...problem.more,
    requestId,
  }
  return new Response(JSON.stringify(body), { status, headers })
}

export const asProblem = (error: unknown): Problem =>
  error instanceof Problem ? error : new Problem('fault')
