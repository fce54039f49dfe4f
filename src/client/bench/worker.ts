/** What a service worker is given; the types of the page's own global do not say. */
type WorkerScope = {
  readonly location: Location
  readonly clients: { readonly claim: () => Promise<void> }
  readonly skipWaiting: () => Promise<void>
  readonly addEventListener: (type: string, run: (event: WorkerEvent) => void) => void
}
type WorkerEvent = {
  readonly request: Request
  readonly waitUntil: (until: Promise<unknown>) => void
  readonly respondWith: (answer: Promise<Response>) => void
}

const CACHE = 'bench'
/** A link half dead answers nothing for long: after this the kept page is shown. */
const LIMIT_MS = 3000

const scope = globalThis as unknown as WorkerScope

/** The sheet of a docket, whichever step is asked for: one kept page stands for all. */
const sheetOf = (url: URL): string | null => /^\/bench\/[^/]+$/.exec(url.pathname)?.[0] ?? null

const after = (ms: number): Promise<null> =>
  new Promise((done) => {
    setTimeout(() => done(null), ms)
  })

/** Keeps what is a sheet; lets go of one that is not ours to see any more. */
const keep = async (key: string, response: Response): Promise<void> => {
  const cache = await caches.open(CACHE)
  if (response.ok && !response.redirected) await cache.put(key, response)
  else if ([401, 403, 404].includes(response.status)) await cache.delete(key)
}

/** The network first; after the limit, or without it, what was kept; else the network however long. */
const sheet = async (event: WorkerEvent, key: string): Promise<Response> => {
  const asked = fetch(event.request).then((response) => {
    event.waitUntil(keep(key, response.clone()))
    return response
  })
  // Shown or not, the fresh page is kept for the next time.
  event.waitUntil(asked.catch(() => null))
  const first = await Promise.race([asked.catch(() => null), after(LIMIT_MS)])
  if (first && first.status < 500) return first
  const kept = await (await caches.open(CACHE)).match(key)
  return kept ?? asked
}

/** Another page of a docket without a signal: back to its sheet, which says why. */
const elsewhere = async (event: WorkerEvent, url: URL): Promise<Response> => {
  try {
    return await fetch(event.request)
  } catch (error) {
    const own = `/${url.pathname.split('/').slice(1, 3).join('/')}`
    const kept = await (await caches.open(CACHE)).match(own)
    if (kept === undefined) throw error
    return Response.redirect(`${own}#no-signal`, 302)
  }
}

/** Files named after their content never change: once is enough. */
const file = async (event: WorkerEvent): Promise<Response> => {
  const cache = await caches.open(CACHE)
  const kept = await cache.match(event.request.url)
  if (kept) return kept
  const response = await fetch(event.request)
  if (response.ok) event.waitUntil(cache.put(event.request.url, response.clone()))
  return response
}

scope.addEventListener('install', (event) => event.waitUntil(scope.skipWaiting()))
scope.addEventListener('activate', (event) => event.waitUntil(scope.clients.claim()))
scope.addEventListener('fetch', (event) => {
  const { request } = event
  const url = new URL(request.url)
  if (request.method !== 'GET' || url.origin !== scope.location.origin) return
  if (url.pathname.startsWith('/assets/')) event.respondWith(file(event))
  else if (request.mode === 'navigate' && url.pathname.startsWith('/bench/')) {
    const key = sheetOf(url)
    event.respondWith(key ? sheet(event, key) : elsewhere(event, url))
  }
})
