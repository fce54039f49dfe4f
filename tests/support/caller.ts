import { checkAnswer } from './checked'
import type { World } from './world'

// biome-ignore lint/suspicious/noExplicitAny: an answer is what it is; the checker holds its shape.
export type Json = any

export type Sent = {
  readonly key?: string | undefined
  readonly json?: unknown
  readonly body?: RequestInit['body']
  /** The revision of If-Match. */
  readonly match?: number | string | undefined
  readonly headers?: Readonly<Record<string, string>>
}

export type Answer = {
  readonly status: number
  readonly headers: Headers
  readonly text: string
  readonly json: Json
}

export type Caller = (method: string, path: string, sent?: Sent) => Promise<Answer>

/** Sends requests as any program could, and holds every answer to what the registry promises. */
export const callerOf =
  (world: Pick<World, 'fetch'>): Caller =>
  async (method, path, sent = {}) => {
    const answer = await world.fetch(path, {
      method,
      headers: {
        ...(sent.json === undefined ? {} : { 'content-type': 'application/json' }),
        ...(sent.key === undefined ? {} : { authorization: `Bearer ${sent.key}` }),
        ...(sent.match === undefined ? {} : { 'if-match': `"${sent.match}"` }),
        ...sent.headers,
      },
      ...(sent.json === undefined ? {} : { body: JSON.stringify(sent.json) }),
      ...(sent.body === undefined ? {} : { body: sent.body }),
    })
    const bytes = Buffer.from(await answer.arrayBuffer())
    const text = bytes.toString('utf8')
    checkAnswer(method, path, answer, text)
    const type = answer.headers.get('content-type') ?? ''
    const json = /json/.test(type) && text !== '' ? JSON.parse(text) : null
    return { status: answer.status, headers: answer.headers, text, json }
  }
