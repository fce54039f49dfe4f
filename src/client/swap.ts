const PARTS = ['head', 'now'] as const

/** Keeps the lines that are the same and adds the new ones at the end, so only they are read out. */
const mergeLog = (old: Element, next: Element): void => {
  const fresh = [...next.children]
  fresh.forEach((line, i) => {
    const was = old.children[i]
    if (was?.isEqualNode(line)) return
    const copy = document.importNode(line, true)
    if (was) was.replaceWith(copy)
    else old.append(copy)
  })
  while (old.children.length > fresh.length) old.lastElementChild?.remove()
}

const part = (root: ParentNode, name: string): Element | null =>
  root.querySelector(`[data-part="${name}"]`)

/** Puts a fetched page in place of this one, then moves the focus to what is new. False: not a page. */
export const swap = (html: string): boolean => {
  const next = new DOMParser().parseFromString(html, 'text/html')
  const main = document.querySelector('main')
  const nextMain = next.querySelector('main')
  if (!main || !nextMain) return false
  const log = part(main, 'log')?.querySelector('ol')
  const nextLog = part(nextMain, 'log')?.querySelector('ol')
  const notices = nextMain.querySelector('.notice') ?? main.querySelector('.notice')
  if (log && nextLog && !notices && PARTS.every((p) => part(main, p) && part(nextMain, p))) {
    mergeLog(log, nextLog)
    for (const p of PARTS) {
      const fresh = part(nextMain, p)
      if (fresh) part(main, p)?.replaceWith(document.importNode(fresh, true))
    }
  } else main.replaceWith(document.importNode(nextMain, true))
  document.title = next.title
  for (const place of ['#faults', '#q', 'main']) {
    const focus = document.querySelector<HTMLElement>(place)
    if (!focus) continue
    focus.focus()
    break
  }
  return true
}
