import { LEFT } from './bench/left'
import { flush } from './bench/queue'
import { sender } from './bench/send'
import { allLines, clearAll, lineStore, openDatabase } from './bench/store'

/** Lines of this device the studio does not have, after one more try to send them. */
const leftBehind = async (): Promise<number> => {
  const db = await openDatabase()
  const count = async () => (await allLines(db)).filter((line) => !line.sent).length
  if ((await count()) > 0) await flush(lineStore(db), sender)
  const left = await count()
  db.close()
  return left
}

/** Nothing of any sheet stays on a device that was signed out. */
const forget = async (): Promise<void> => {
  // Pages with a sheet open bring nothing more; each is told in a turn of its own.
  const pages = new BroadcastChannel('bench')
  pages.postMessage(LEFT)
  await new Promise((done) => setTimeout(done))
  pages.close()
  const db = await openDatabase()
  await clearAll(db)
  db.close()
  await globalThis.caches?.delete('bench')
  for (const worker of (await navigator.serviceWorker?.getRegistrations()) ?? [])
    await worker.unregister()
}

/** Says how many would be lost; true once that very number was confirmed. */
const confirmed = (form: HTMLFormElement, left: number): boolean => {
  const note = form.querySelector<HTMLElement>('[data-left-behind]')
  const count = note?.querySelector<HTMLElement>('[data-count]')
  const tick = note?.querySelector<HTMLInputElement>('input')
  if (!note || !count || !tick) return false
  const asked = note.dataset.asked
  if (asked === String(left) && tick.checked) return true
  note.dataset.text ??= count.textContent ?? ''
  note.dataset.asked = String(left)
  count.textContent = note.dataset.text.replace('#', String(left))
  note.hidden = false
  note.setAttribute('role', 'alert')
  tick.checked = false
  tick.focus()
  return false
}

/** The studio ends the session first: a device that only forgot would lose lines and stay signed in. */
const leave = async (form: HTMLFormElement): Promise<void> => {
  const left = await leftBehind()
  if (left > 0 && !confirmed(form, left)) return
  const fields = [...new FormData(form)].map(([name, value]) => [name, String(value)])
  const body = new URLSearchParams(fields)
  const answer = await fetch(form.action, { method: 'POST', body }).catch(() => null)
  if (answer === null || answer.status >= 500) {
    const note = form.querySelector<HTMLElement>('[data-needs-signal]')
    if (note) note.hidden = false
    return
  }
  await forget().catch(() => undefined)
  location.assign(answer.url)
}

/** Signing out waits until everything was sent, or a person said how much may be lost. */
document.addEventListener(
  'submit',
  (event) => {
    const form = event.target
    if (!(form instanceof HTMLFormElement) || !form.dataset.signOut || !('indexedDB' in globalThis))
      return
    event.preventDefault()
    event.stopImmediatePropagation()
    // A browser that keeps nothing has nothing to lose.
    void leave(form).catch(() => form.submit())
  },
  true,
)
