const CACHE = 'bench'
const SCOPE = '/bench/'

/** A page may be kept here: https or this very machine, and a browser that can. */
export const canKeep = (): boolean =>
  isSecureContext &&
  'serviceWorker' in navigator &&
  'caches' in globalThis &&
  'indexedDB' in globalThis

/** Files of ours this page has loaded. */
const filesOf = (): readonly string[] =>
  [...document.querySelectorAll<HTMLElement>('link[rel="stylesheet"], script[src]')].map(
    (e) => (e as HTMLLinkElement).href || (e as HTMLScriptElement).src,
  )

/**
 * Keeps this page and its files, so that it opens without a signal, and asks the browser not to throw
 * them away. The first visit keeps them itself: no worker saw it load.
 */
export const keepPage = async (workerFile: string): Promise<void> => {
  await navigator.serviceWorker.register(workerFile, { scope: SCOPE })
  void navigator.storage?.persist?.()
  const cache = await caches.open(CACHE)
  for (const url of filesOf()) if ((await cache.match(url)) === undefined) await cache.add(url)
  const page = location.pathname
  if ((await cache.match(page)) === undefined) await cache.add(page)
  await dropOldFiles(cache)
}

/** Files of earlier builds go once no kept page names them. */
const dropOldFiles = async (cache: Cache): Promise<void> => {
  const kept = (await cache.keys()).map((r) => r.url)
  const isPage = (url: string): boolean => new URL(url).pathname.startsWith(SCOPE)
  const pages: string[] = []
  for (const url of kept.filter(isPage)) pages.push((await (await cache.match(url))?.text()) ?? '')
  const named = (url: string): boolean => pages.some((page) => page.includes(new URL(url).pathname))
  for (const url of kept) if (!isPage(url) && !named(url)) await cache.delete(url)
}

/** Lets go of kept sheets. */
export const letGo = async (dockets: readonly string[]): Promise<void> => {
  const cache = await caches.open(CACHE)
  for (const id of dockets) await cache.delete(`${SCOPE}${encodeURIComponent(id)}`)
}
