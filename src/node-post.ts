import { lookup as lookupName } from 'node:dns'
import { request } from 'node:https'
import { BlockList, isIPv6, type LookupFunction } from 'node:net'

/** Addresses of no public machine (IANA special-purpose registries, RFC 6890 and its updates). */
const PRIVATE_V4 = [
  ['0.0.0.0', 8],
  ['10.0.0.0', 8],
  ['100.64.0.0', 10],
  ['127.0.0.0', 8],
  ['169.254.0.0', 16],
  ['172.16.0.0', 12],
  ['192.0.0.0', 24],
  ['192.0.2.0', 24],
  ['192.31.196.0', 24],
  ['192.52.193.0', 24],
  ['192.88.99.0', 24],
  ['192.168.0.0', 16],
  ['192.175.48.0', 24],
  ['198.18.0.0', 15],
  ['198.51.100.0', 24],
  ['203.0.113.0', 24],
  ['224.0.0.0', 4],
  ['240.0.0.0', 4],
] as const

/** All of IPv6 that is not global unicast, and what of it is set aside or holds an IPv4 address. */
const PRIVATE_V6 = [
  ['::', 3],
  ['4000::', 2],
  ['8000::', 1],
  ['2001::', 23],
  ['2001:db8::', 32],
  ['2002::', 16],
  ['3fff::', 20],
] as const

const listed = (nets: readonly (readonly [string, number])[], kind: 'ipv4' | 'ipv6') => {
  const list = new BlockList()
  for (const [net, prefix] of nets) list.addSubnet(net, prefix, kind)
  return list
}
// Apart, as a list of both takes an IPv4 address for its mapped IPv6 one.
const blocked4 = listed(PRIVATE_V4, 'ipv4')
const blocked6 = listed(PRIVATE_V6, 'ipv6')

/** Whether an IP address is one that anybody in the world may reach. */
export const isPublicIp = (address: string): boolean =>
  isIPv6(address) ? !blocked6.check(address, 'ipv6') : !blocked4.check(address, 'ipv4')

/** Looks a name up and gives public addresses only, at the very moment of connecting. */
const publicLookup: LookupFunction = (host, options, done) => {
  lookupName(host, { ...options, all: true }, (error, found) => {
    if (error) return done(error, '', 4)
    const open = found.filter((f) => isPublicIp(f.address))
    const first = open[0]
    if (!first) return done(new Error('no public address'), '', 4)
    if (options.all) return done(null, open)
    return done(null, first.address, first.family)
  })
}

/** A message may take this long in all. */
const TIME_MS = 10_000

/**
 * Sends one message from this machine: to public addresses only, whatever the name says when it is
 * connected to, without following a redirect, within ten seconds. The answer's body is not read.
 */
export const nodePost = (
  url: string,
  headers: Readonly<Record<string, string>>,
  body: string,
): Promise<number | null> =>
  new Promise((resolve) => {
    const sent = request(
      url,
      {
        method: 'POST',
        headers: { ...headers, 'content-length': Buffer.byteLength(body) },
        lookup: publicLookup,
        signal: AbortSignal.timeout(TIME_MS),
        agent: false,
      },
      (answer) => {
        resolve(answer.statusCode ?? null)
        answer.destroy()
      },
    )
    sent.on('error', () => resolve(null))
    sent.end(body)
  })
