/** Names of the cookies; behind https they carry the prefix that binds them to this host. */
export const studioCookie = (secure: boolean): string => (secure ? '__Host-js' : 'js')
export const docketCookie = (docket: string, secure: boolean): string =>
  `${secure ? '__Host-' : ''}jd-${docket}`

export const readCookie = (request: Request, name: string): string | null => {
  for (const part of (request.headers.get('cookie') ?? '').split(';')) {
    const at = part.indexOf('=')
    if (at > 0 && part.slice(0, at).trim() === name) return part.slice(at + 1).trim()
  }
  return null
}

/** Keys of dockets this browser holds, at most twenty: from cookies named after them. */
export const heldKeys = (request: Request, secure: boolean): readonly string[] => {
  const start = docketCookie('', secure)
  return (request.headers.get('cookie') ?? '')
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part.startsWith(start) && part.includes('='))
    .map((part) => part.slice(part.indexOf('=') + 1))
    .filter((key) => /^[A-Za-z0-9_-]{16,200}$/.test(key))
    .slice(0, 20)
}

/** A Set-Cookie value; `seconds` 0 ends it. Values are base64url, so nothing needs escaping. */
export const setCookie = (
  name: string,
  value: string,
  options: { readonly secure: boolean; readonly seconds: number; readonly strict?: boolean },
): string =>
  [
    `${name}=${value}`,
    'Path=/',
    `Max-Age=${options.seconds}`,
    'HttpOnly',
    `SameSite=${options.strict ? 'Strict' : 'Lax'}`,
    ...(options.secure ? ['Secure'] : []),
  ].join('; ')
