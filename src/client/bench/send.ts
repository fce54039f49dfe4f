import type { Answer, PictureAnswer, Queued, Sender } from './queue'

/** A request nobody answers is given up after this long; what it carried is sent again later. */
const GIVE_UP_MS = 20_000

type Told = {
  readonly detail?: string
  readonly title?: string
  readonly errors?: readonly { readonly pointer: string; readonly message: string }[]
}

const told = async (response: Response): Promise<Told> => {
  try {
    return (await response.json()) as Told
  } catch {
    return {}
  }
}

/** Answers that say nothing of the lines: they wait and go again. */
const LATER = new Set([408, 425, 429])

const ended = async (
  response: Response,
): Promise<Exclude<Answer, { kind: 'taken' | 'faults' }>> => {
  const { status } = response
  if (status >= 500 || LATER.has(status)) return { kind: 'away' }
  if (status === 401 || status === 403) return { kind: 'signed-out' }
  if (status === 413) return { kind: 'too-large' }
  const { detail, title } = await told(response)
  return { kind: 'refused', message: detail ?? title ?? String(status) }
}

const placeOf = (pointer: string): number | null => {
  const at = /^\/lines\/(\d+)(?:\/|$)/.exec(pointer)?.[1]
  return at === undefined ? null : Number(at)
}

/** The line as the studio takes it. */
const sentAs = ({ id, kind, body, device, n, at }: Queued) => ({ id, kind, body, device, n, at })

const post = async (
  url: string,
  body: BodyInit,
  headers: Readonly<Record<string, string>>,
): Promise<Response | null> => {
  try {
    const signal = AbortSignal.timeout(GIVE_UP_MS)
    return await fetch(url, { method: 'POST', body, headers, signal })
  } catch {
    return null
  }
}

const away = { kind: 'away' } as const

/** Sends lines and pictures through the API of the studio this page came from. */
export const sender: Sender = {
  lines: async (docket, lines): Promise<Answer> => {
    const response = await post(
      `/api/v1/dockets/${encodeURIComponent(docket)}/lines`,
      JSON.stringify({ lines: lines.map(sentAs) }),
      { 'content-type': 'application/json' },
    )
    if (response === null) return away
    if (response.status === 422) {
      const { errors = [] } = await told(response)
      const faults = errors.map((e) => ({ at: placeOf(e.pointer), message: e.message }))
      return { kind: 'faults', faults }
    }
    if (!response.ok) return ended(response)
    try {
      const { added, already } = (await response.json()) as {
        readonly added: readonly string[]
        readonly already: readonly string[]
      }
      return { kind: 'taken', ids: [...added, ...already] }
    } catch {
      return away
    }
  },
  picture: async (line): Promise<PictureAnswer> => {
    const form = new FormData()
    form.set('subject', 'finding')
    form.set('file', line.picture as Blob, 'photo.jpg')
    // The line's own id is the key: an answer that got lost is given again, not a second picture.
    const response = await post(`/api/v1/dockets/${encodeURIComponent(line.docket)}/photos`, form, {
      'idempotency-key': line.id,
    })
    if (response === null) return away
    if (response.status === 422) {
      const { errors = [] } = await told(response)
      return { kind: 'refused', message: errors[0]?.message ?? '422' }
    }
    if (!response.ok) return ended(response)
    try {
      const { photo } = (await response.json()) as { readonly photo: string }
      return { kind: 'kept', photo }
    } catch {
      return away
    }
  },
}
