import type { Fault } from '../http/problem'

/** Names that lead into a machine or its own network, whatever stands before them. */
const INSIDE = [
  'localhost',
  'local',
  'internal',
  'intranet',
  'private',
  'corp',
  'home',
  'lan',
  'home.arpa',
  'onion',
]

const isInside = (host: string): boolean =>
  INSIDE.some((name) => host === name || host.endsWith(`.${name}`))

/** An IP address in any way of writing it: the URL parser brings them all to these two forms. */
const isLiteral = (host: string): boolean =>
  host.startsWith('[') || /^\d+\.\d+\.\d+\.\d+$/.test(host)

/**
 * The address messages may be sent to: https on its own port, a public host by name, no user and no
 * password in it. Where the name leads is looked at again when it is connected to.
 */
export const publicAddress = (
  typed: string,
): { readonly url: string } | { readonly fault: Fault['code'] } => {
  let url: URL
  try {
    url = new URL(typed)
  } catch {
    return { fault: 'ERR_HOOK_URL' }
  }
  const host = url.hostname.replace(/\.$/, '').toLowerCase()
  if (url.protocol !== 'https:' || url.port !== '') return { fault: 'ERR_HOOK_HTTPS' }
  if (url.username !== '' || url.password !== '') return { fault: 'ERR_HOOK_USER' }
  if (isLiteral(host) || isInside(host) || !host.includes('.')) return { fault: 'ERR_HOOK_HOST' }
  url.hash = ''
  return { url: url.toString() }
}
