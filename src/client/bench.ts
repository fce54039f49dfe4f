import { addresses } from '../pages/bench/addresses'
import { canKeep, keepPage, letGo } from './bench/keep-page'
import { LEFT } from './bench/left'
import { rememberFolds } from './bench/morph'
import { type OpenSheet, openSheet } from './bench/sheet'
import { dropOldSheets, openDatabase } from './bench/store'
import { setUpPads } from './pad'
import { sendPlainly } from './submit'

const docket = decodeURIComponent(location.pathname.split('/')[2] ?? '')
const pages = [addresses.lines(docket), addresses.findings(docket)]

const workerFile = (): string => document.getElementById('sheet')?.dataset.worker ?? ''

/** Shows the sentence that stands ready in the page, and is not shown otherwise. */
const say = (name: string): void => {
  const notice = document.querySelector<HTMLElement>(`[data-notice="${name}"]`)
  if (notice) notice.hidden = false
}

/** Said once in this browser: later it is known. */
const sayOnce = (name: string): void => {
  try {
    if (localStorage.getItem(name) !== null) return
    localStorage.setItem(name, '1')
  } catch {
    // A browser that keeps nothing is told each time.
  }
  say(name)
}

/** Two taps in a row on one spot: the second would press what has come there since. */
const swallowDoubleTap = (event: MouseEvent): void => {
  const button = (event.target as Element).closest('button')
  if (event.detail > 1 && button?.type === 'submit') event.preventDefault()
}

const listen = (sheet: Promise<OpenSheet | null>): void => {
  let busy = false
  document.addEventListener('click', swallowDoubleTap, true)
  document.addEventListener('submit', (event) => {
    const form = event.target as HTMLFormElement
    if (!pages.includes(new URL(form.action).pathname)) return
    event.preventDefault()
    if (busy) return
    busy = true
    void sheet
      .then((open) => open?.submit(form, event.submitter) ?? false)
      .then((done) => done || sendPlainly(form, event.submitter))
      .finally(() => {
        busy = false
      })
  })
  document.addEventListener('click', (event) => {
    const target = event.target as Element
    const link = target.closest('a')
    const data = target.closest('button')?.dataset
    if (link && !event.ctrlKey && !event.metaKey && link.pathname === addresses.sheet(docket)) {
      event.preventDefault()
      history.pushState(null, '', link.href)
      void sheet.then(async (open) => {
        if (!(await open?.show())) location.reload()
        scrollTo(0, 0)
      })
    }
    if (data?.again) void sheet.then((open) => open?.sendAgain(data.again ?? ''))
    if (data?.drop) void sheet.then((open) => open?.drop(data.drop ?? ''))
  })
}

const start = async (): Promise<OpenSheet | null> => {
  try {
    const db = await openDatabase()
    const others = new BroadcastChannel('bench')
    const sheet = openSheet(db, docket, () => others.postMessage(docket))
    others.onmessage = ({ data }) => (data === LEFT ? sheet.stop() : void sheet.show())
    addEventListener('popstate', () => void sheet.show())
    addEventListener('online', () => void sheet.sync())
    addEventListener('pageshow', (event) => event.persisted && void sheet.sync())
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') void sheet.sync()
    })
    await sheet.show()
    void sheet.sync()
    void dropOldSheets(db, Date.now()).then(letGo)
    return sheet
  } catch {
    return null
  }
}

rememberFolds(document)
setUpPads(document)
document.querySelector<HTMLElement>('#faults')?.focus()
if (location.hash === '#no-signal') say('no-signal')
if (canKeep()) {
  listen(start())
  void keepPage(workerFile()).catch(() => undefined)
} else sayOnce('not-kept')
