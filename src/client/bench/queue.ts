/** A line written on this device that the studio has not confirmed. Times are UTC milliseconds. */
export type Queued = {
  readonly id: string
  readonly docket: string
  readonly kind: string
  readonly body: Readonly<Record<string, unknown>>
  /** This device's name and its running number: the line's place among its own. */
  readonly device: string
  readonly n: number
  readonly at: number
  /** A picture that goes first; the line then names it. */
  readonly picture?: Blob
  /** Why the studio did not take it; it waits for a person then. */
  readonly refused?: string
  /** The studio has it; it is shown from here until the sheet that holds it has been brought. */
  readonly sent?: true
}

export type Written = Pick<Queued, 'id' | 'docket' | 'kind' | 'body' | 'at' | 'picture'>

/** Where lines wait. Each call is whole or did not happen, and two pages of one device share it. */
export type LineStore = {
  /** Keeps lines under the next running numbers, all or none. When it resolves they outlive the page. */
  readonly add: (lines: readonly Written[]) => Promise<void>
  /** Lines that may be sent, in the order they were written. */
  readonly waiting: () => Promise<readonly Queued[]>
  /** The studio said it has these. */
  readonly arrived: (ids: readonly string[]) => Promise<void>
  readonly refuse: (id: string, why: string) => Promise<void>
  /** The picture has arrived under this name. */
  readonly pictured: (id: string, photo: string) => Promise<void>
}

/** What became of lines that were sent. */
export type Answer =
  | { readonly kind: 'taken'; readonly ids: readonly string[] }
  /** Some are wrong: the place in what was sent, and the sentence. None was written. */
  | {
      readonly kind: 'faults'
      readonly faults: readonly { readonly at: number | null; readonly message: string }[]
    }
  /** The docket takes none of them. */
  | { readonly kind: 'refused'; readonly message: string }
  | { readonly kind: 'too-large' }
  | { readonly kind: 'signed-out' }
  | { readonly kind: 'away' }

export type PictureAnswer =
  | { readonly kind: 'kept'; readonly photo: string }
  | Exclude<Answer, { kind: 'taken' | 'faults' }>

export type Sender = {
  readonly lines: (docket: string, lines: readonly Queued[]) => Promise<Answer>
  readonly picture: (line: Queued) => Promise<PictureAnswer>
}

export type Flushed = 'sent' | 'away' | 'signed-out'

/** Lines sent at once, and the characters of them: the studio takes a quarter of a megabyte. */
const MOST_LINES = 50
const MOST_CHARACTERS = 60_000

/** The next lines to send: of one docket, in order, no more than fit; never none where one waits. */
export const batchOf = (waiting: readonly Queued[], most = MOST_LINES): readonly Queued[] => {
  const first = waiting[0]
  if (first === undefined) return []
  const batch: Queued[] = []
  let characters = 0
  for (const line of waiting) {
    if (line.docket !== first.docket) continue
    characters += JSON.stringify(line.body).length
    if (batch.length > 0 && (batch.length >= most || characters > MOST_CHARACTERS)) break
    batch.push(line)
  }
  return batch
}

const sendPictures = async (store: LineStore, send: Sender): Promise<Flushed> => {
  for (const line of await store.waiting()) {
    if (line.picture === undefined) continue
    const answer = await send.picture(line)
    if (answer.kind === 'kept') await store.pictured(line.id, answer.photo)
    else if (answer.kind === 'signed-out' || answer.kind === 'away') return answer.kind
    else await store.refuse(line.id, answer.kind === 'refused' ? answer.message : 'too-large')
  }
  return 'sent'
}

/** Puts aside what cannot be taken. False: nothing could be named, so fewer must be sent at once. */
const setAside = async (
  store: LineStore,
  batch: readonly Queued[],
  answer: Exclude<Answer, { kind: 'taken' | 'signed-out' | 'away' }>,
): Promise<boolean> => {
  if (answer.kind === 'refused') {
    for (const line of batch) await store.refuse(line.id, answer.message)
    return true
  }
  const named = answer.kind === 'faults' ? answer.faults : []
  let found = false
  for (const { at, message } of named) {
    const line = at === null ? undefined : batch[at]
    if (line === undefined) continue
    await store.refuse(line.id, message)
    found = true
  }
  if (found || batch.length > 1) return found
  const only = batch[0]
  if (only) await store.refuse(only.id, named[0]?.message ?? 'too-large')
  return true
}

/**
 * Sends all that waits. A line counts as sent only when the studio said it has it, and carries its
 * own id, so that a lost answer, two pages sending at once or a page killed between the two neither
 * loses nor doubles anything.
 */
export const flush = async (store: LineStore, send: Sender): Promise<Flushed> => {
  const pictures = await sendPictures(store, send)
  let most = MOST_LINES
  for (;;) {
    const waiting = (await store.waiting()).filter((line) => line.picture === undefined)
    const batch = batchOf(waiting, most)
    const docket = batch[0]?.docket
    if (docket === undefined) return pictures
    const answer = await send.lines(docket, batch)
    if (answer.kind === 'away' || answer.kind === 'signed-out') return answer.kind
    if (answer.kind === 'taken') {
      const taken = batch.map((line) => line.id).filter((id) => answer.ids.includes(id))
      // An answer that names none of them is not the studio's.
      if (taken.length === 0) return 'away'
      await store.arrived(taken)
    } else if (!(await setAside(store, batch, answer))) most = 1
  }
}
