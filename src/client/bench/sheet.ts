import { addresses } from '../../pages/bench/addresses'
import type { Unsent } from '../../pages/bench/bench-view'
import type { Carried } from '../../pages/bench/carried'
import type { FormLine } from '../../pages/bench/form-lines'
import type { Words } from '../../words/render'
import { setUpPads } from '../pad'
import { reencode } from '../photo'
import { bring } from './bring'
import { morphInto } from './morph'
import { flush } from './queue'
import { sender } from './send'
import { type Refusal, readForm, sheetMarkup, sheetView, titleOf, wordsOf } from './show'
import { allLines, type Database, lineStore, newId, tryAgain } from './store'
import { tick } from './timers'

/** Lines on their way are not told as unsent for so long: most arrive sooner. */
const QUIET_MS = 1000
/** Waits between tries while lines wait and nothing else calls for one. */
const TRIES_MS = [5_000, 10_000, 20_000, 40_000, 60_000] as const

/** Lines after which the sheet stands at the next step, not at the one that was chosen. */
const GOES_ON: readonly string[] = ['began', 'broke-off', 'done']

const page = (): HTMLElement => document.getElementById('sheet') as HTMLElement
const stepOf = (): string | null => new URLSearchParams(location.search).get('step')

/** The open sheet of this page: drawn from what is kept here, sent and brought when there is a signal. */
export const openSheet = (db: Database, docket: string, tell: () => void) => {
  const store = lineStore(db)
  let why: Unsent['why'] | null = null
  let refusal: Refusal | null = null
  let shown: { readonly carried: Carried; readonly words: Words } | null = null
  let sending: Promise<void> | null = null
  let once = newId()
  let tries = 0
  let left = false
  let asked = false
  let timer: ReturnType<typeof setTimeout> | undefined

  /** The studio's page says what was refused, or is newer than what is kept until that was asked for. */
  const staysAsItCame = (kept: Carried): boolean =>
    page().dataset.refused !== undefined || (!asked && kept.rev < Number(page().dataset.rev))

  /** Draws the page anew; false where nothing was brought yet. */
  const show = async (): Promise<boolean> => {
    const kept = await db.get('sheets', docket)
    const given = kept && (await db.get('words', kept.words))
    if (!kept || !given) return false
    const { carried } = kept
    const words = wordsOf(carried, given)
    shown = { carried, words }
    if (staysAsItCame(carried)) return true
    const view = sheetView(carried, await allLines(db), words, stepOf(), why)
    morphInto(page(), sheetMarkup(view, words, once, refusal))
    document.title = `${titleOf(view, words)} · ${document.title.split(' · ').at(-1)}`
    setUpPads(page())
    tick(page(), words)
    return true
  }

  const waits = async (): Promise<boolean> => (await store.waiting()).length > 0

  const sendAndBring = async (): Promise<void> => {
    const late = setTimeout(() => {
      why ??= 'away'
      void show()
    }, QUIET_MS)
    const flushed = await flush(store, sender)
    clearTimeout(late)
    why = flushed === 'sent' ? null : flushed
    const brought = flushed === 'sent' && (await bring(db, docket, () => left))
    tries = brought ? 0 : tries
    asked = true
    await show()
    tell()
    clearTimeout(timer)
    if (why !== null && (await waits())) {
      timer = setTimeout(() => void sync(), TRIES_MS[Math.min(tries, TRIES_MS.length - 1)])
      tries += 1
    }
  }

  /** Sends what waits and brings the sheet; a call while one runs has it run once more. */
  let again = false
  const sync = async (): Promise<void> => {
    if (left) return
    again = sending !== null
    sending ??= (async () => {
      try {
        do {
          again = false
          await sendAndBring()
        } while (again)
      } finally {
        sending = null
      }
    })()
    return sending
  }

  /** Keeps lines on this device; the form may be emptied when it resolves. */
  const write = async (lines: readonly FormLine[], picture: Blob | undefined): Promise<void> => {
    const now = { docket, at: Date.now(), ...(picture ? { picture } : {}) }
    await store.add(lines.map((line) => ({ ...line, ...now, id: newId() })))
  }

  const refuse = async (given: Refusal): Promise<void> => {
    refusal = given
    await show()
    refusal = null
    document.getElementById('faults')?.focus()
  }

  /** The next step stands on top again; what had the focus may be gone with its form. */
  const settle = async (kinds: readonly string[]): Promise<void> => {
    const before = document.querySelector('#step h1')?.textContent
    if (kinds.some((kind) => GOES_ON.includes(kind)))
      history.replaceState(null, '', addresses.sheet(docket))
    await show()
    const heading = document.querySelector<HTMLElement>('main h1')
    if (!heading) return
    const moved = heading.textContent !== before
    if (moved || document.activeElement === document.body) {
      heading.tabIndex = -1
      heading.focus({ preventScroll: !moved })
    }
  }

  /** Writes down a form of the sheet. False: this device cannot, the form must go the plain way. */
  const submit = async (form: HTMLFormElement, pressed: HTMLElement | null): Promise<boolean> => {
    if (shown === null) return false
    const { carried, words } = shown
    const fields = new FormData(form, pressed)
    const read = readForm(fields, carried, await allLines(db), words, Date.now())
    if (!read.ok) {
      await refuse(read.refusal)
      return true
    }
    const file = fields.get('file')
    const picture = file instanceof File && file.size > 0 ? await reencode(file) : undefined
    try {
      await write(read.lines, picture)
    } catch {
      return false
    }
    form.reset()
    delete page().dataset.refused
    once = newId()
    await settle(read.lines.map((line) => line.kind))
    tell()
    void sync()
    return true
  }

  const sendAgain = async (id: string): Promise<void> => {
    await tryAgain(db, id)
    await sync()
  }
  const drop = async (id: string): Promise<void> => {
    await db.delete('lines', id)
    await show()
    tell()
  }
  setInterval(() => shown && tick(page(), shown.words), 1000)
  const stop = (): void => {
    left = true
    clearTimeout(timer)
  }
  return { show, sync, submit, sendAgain, drop, stop }
}
export type OpenSheet = ReturnType<typeof openSheet>
