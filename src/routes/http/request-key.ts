import type { Form, Route } from '../route'
import type { Shown } from './credentials'
import { keptUnder } from './kept-answer'
import { sha256 } from './keys'
import { Problem } from './problem'

/** A request that may be sent twice: whose it is, its key hashed and as given, and what it says. */
export type RequestKey = {
  readonly scope: string
  readonly key: string
  readonly raw: string
  readonly print: string
}

/** The inputs of a form that take a file. */
const FILES = ['file', 'camera'] as const

/** What a form says, the bytes of its files included: two pictures are never taken for one. */
const formPrint = async (form: Form): Promise<string> => {
  const prints: string[] = []
  for (const name of FILES) {
    const file = form.file(name)
    prints.push(file === null ? '' : await sha256(new Uint8Array(await file.arrayBuffer())))
  }
  return sha256(JSON.stringify([form.entries, prints]))
}

const printOf = async (route: Route, key: string, body: unknown): Promise<string> => {
  if (route.face === 'page') return sha256(JSON.stringify(key))
  return route.body === 'multipart' ? formPrint(body as Form) : sha256(JSON.stringify(body ?? null))
}

/** The key of a request that may be sent twice: the header of an API call, the hidden field of a form. */
const givenKey = async (route: Route, request: Request, body: unknown): Promise<string | null> => {
  if (route.method !== 'POST' || (route.face === 'page' && route.rights === 'public')) return null
  if (route.face === 'page') {
    const form = body as Form | undefined
    const once = form?.get('once') ?? null
    // The same page may send another answer after going back; only the same answer counts once.
    return form && once ? formPrint(form) : null
  }
  const header = request.headers.get('idempotency-key')
  if (header === null) return null
  const text = header.trim()
  const quoted = /^"([\x20-\x7e]{1,200})"$/.exec(text) ?? /^([\w.:-]{1,200})$/.exec(text)
  if (!quoted?.[1])
    throw new Problem('invalid', { faults: [{ pointer: '', code: 'ERR_IDEMPOTENCY_KEY' }] })
  return quoted[1]
}

/**
 * Whose key it is. Callers without credentials count by their address: the answer may hold a new
 * docket's key, which nobody may fetch by guessing what somebody else called their request.
 */
const scopeOf = (s: Shown, address: string): string =>
  s.kind === 'access' || s.kind === 'session'
    ? s.hash
    : s.kind === 'none'
      ? `none ${address}`
      : s.kind

/** The key of this request, with what it is kept under; null for none. Throws 422 on a bad one. */
export const keyOf = async (
  route: Route,
  {
    request,
    params,
  }: { readonly request: Request; readonly params: Readonly<Record<string, string>> },
  s: Shown,
  body: unknown,
  address: string,
): Promise<RequestKey | null> => {
  const key = await givenKey(route, request, body)
  if (key === null) return null
  const scope = `${route.id}:${Object.values(params).join('/')}:${scopeOf(s, address)}`
  return { scope, key: await keptUnder(key), raw: key, print: await printOf(route, key, body) }
}
