const UNSAFE = new Set(['POST', 'PUT', 'PATCH', 'DELETE'])

/**
 * Whether a request may change something. A browser tells where it comes from; whoever sends a
 * cookie must prove the same origin. A caller without cookie, Origin and Sec-Fetch-Site is no
 * browser acting for somebody, and only its bearer key counts.
 */
export const mayChange = (request: Request, ownOrigins: readonly string[]): boolean => {
  if (!UNSAFE.has(request.method)) return true
  const site = request.headers.get('sec-fetch-site')
  const origin = request.headers.get('origin')
  const cookie = request.headers.get('cookie')
  if (site === null && origin === null && cookie === null) return true
  if (site !== null && site !== 'same-origin') return false
  if (origin !== null) return ownOrigins.includes(origin)
  return site === 'same-origin'
}
