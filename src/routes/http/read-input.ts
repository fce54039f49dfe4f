import type * as z from 'zod'
import type { Form, Route } from '../route'
import { type Fault, invalid, Problem } from './problem'

export const MOST_BODY_BYTES = 262_144
export const MOST_UPLOAD_BYTES = 12_582_912
const MOST_DEPTH = 12

/** Cutting a body off closes the connection under the caller's next request, so a little is read on. */
const READ_ON_BYTES = 4_194_304

/** Told how many bytes were read; may throw. */
type Spend = (bytes: number) => void

/** Whether a request may bring so large a body that few may be held at once. */
export const isLarge = (route: Route, request: Request): boolean =>
  route.mostBytes !== undefined ||
  route.body === 'multipart' ||
  route.body === 'picture' ||
  (route.body === 'form' && mediaType(request) === 'multipart/form-data')

/** The body as bytes. Throws 413 where it is longer than `most`; nothing beyond that is kept. */
const readBytes = async (request: Request, most: number, spend: Spend): Promise<Uint8Array> => {
  const told = Number(request.headers.get('content-length') ?? 0)
  if (told > most) throw new Problem('too-large', { more: { most } })
  if (request.body === null) return new Uint8Array()
  const chunks: Uint8Array[] = []
  let length = 0
  const reader = request.body.getReader()
  for (;;) {
    const { done, value } = await reader.read()
    if (done) break
    length += value.byteLength
    if (length <= most) chunks.push(value)
    else chunks.length = 0
    if (length > most + READ_ON_BYTES) {
      await reader.cancel()
      break
    }
  }
  spend(length)
  if (length > most) throw new Problem('too-large', { more: { most } })
  const all = new Uint8Array(length)
  let at = 0
  for (const chunk of chunks) {
    all.set(chunk, at)
    at += chunk.byteLength
  }
  return all
}

/** Parts of a form, at most: each is led by a name. A form of ours has some hundreds. */
const MOST_PARTS = 4_000
const NAME = new TextEncoder().encode('name=')

const parts = (bytes: Uint8Array): number => {
  let n = 0
  for (let i = bytes.indexOf(NAME[0] ?? 0); i >= 0; i = bytes.indexOf(NAME[0] ?? 0, i + 1))
    if (NAME.every((byte, k) => bytes[i + k] === byte)) n += 1
  return n
}

const depth = (value: unknown, level = 0): number => {
  if (level > MOST_DEPTH || value === null || typeof value !== 'object') return level
  let deepest = level
  for (const each of Object.values(value)) deepest = Math.max(deepest, depth(each, level + 1))
  return deepest
}

const pointer = (path: readonly PropertyKey[]): string =>
  path.map((p) => `/${String(p).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')

/** Every fault of a schema as pointers and codes; the input itself is never repeated. */
export const faultsOf = (error: z.ZodError): readonly Fault[] =>
  error.issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) => ({
          pointer: pointer([...issue.path, key]).slice(0, 200),
          code: 'ERR_UNKNOWN_FIELD',
        }))
      : [{ pointer: pointer(issue.path), code: codeOf(issue) }],
  )

const codeOf = (issue: z.core.$ZodIssue): string => {
  if (issue.code === 'too_small') return 'ERR_TOO_SMALL'
  if (issue.code === 'too_big') return 'ERR_TOO_LARGE'
  if (issue.code === 'invalid_type') return issue.input === undefined ? 'ERR_MISSING' : 'ERR_TYPE'
  return 'ERR_VALUE'
}

const mediaType = (request: Request): string =>
  (request.headers.get('content-type') ?? '').split(';')[0]?.trim().toLowerCase() ?? ''

const parseJson = (bytes: Uint8Array): unknown => {
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: false }).decode(bytes)
    return JSON.parse(text)
  } catch {
    throw new Problem('malformed')
  }
}

const toForm = (data: FormData): Form => ({
  get: (name) => {
    const v = data.get(name)
    return typeof v === 'string' ? v : null
  },
  all: (name) => data.getAll(name).filter((v): v is string => typeof v === 'string'),
  file: (name) => {
    const v = data.get(name)
    return v instanceof File && v.size > 0 ? v : null
  },
  entries: [...data.entries()].flatMap(([name, v]) =>
    typeof v === 'string' ? [[name, v] as const] : [],
  ),
})

/** The body a route wants, checked. Throws Problem 400, 413, 415 or 422. */
export const readBody = async (
  route: Route,
  request: Request,
  spend: Spend = () => {},
): Promise<unknown> => {
  if (route.body === undefined) return undefined
  const type = mediaType(request)
  if (route.body === 'form' || route.body === 'multipart') {
    const multipart = type === 'multipart/form-data'
    if (!multipart && (route.body === 'multipart' || type !== 'application/x-www-form-urlencoded'))
      throw new Problem('wrong-type')
    const bytes = await readBytes(request, multipart ? MOST_UPLOAD_BYTES : MOST_BODY_BYTES, spend)
    if (multipart && parts(bytes) > MOST_PARTS) throw new Problem('too-large')
    try {
      const headers = { 'content-type': request.headers.get('content-type') ?? '' }
      return toForm(await new Response(bytes as BodyInit, { headers }).formData())
    } catch {
      throw new Problem('malformed')
    }
  }
  if (route.body === 'picture') {
    if (!type.startsWith('image/')) throw new Problem('wrong-type')
    return readBytes(request, MOST_UPLOAD_BYTES, spend)
  }
  const bytes = await readBytes(request, route.mostBytes ?? MOST_BODY_BYTES, spend)
  if (bytes.byteLength > 0 && type !== 'application/json') throw new Problem('wrong-type')
  const json = bytes.byteLength === 0 ? {} : parseJson(bytes)
  if (depth(json) > MOST_DEPTH) throw new Problem('malformed')
  const parsed = route.body.safeParse(json, { reportInput: true })
  if (!parsed.success) throw invalid(faultsOf(parsed.error))
  return parsed.data
}

/** The query a route wants, checked; a repeated name keeps its last value. */
export const readQuery = (route: Route, url: URL): unknown => {
  if (route.query === undefined) return undefined
  const parsed = route.query.safeParse(Object.fromEntries(url.searchParams), { reportInput: true })
  if (!parsed.success) throw invalid(faultsOf(parsed.error))
  return parsed.data
}
