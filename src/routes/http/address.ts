import type { Config } from '../../config'

/**
 * Who a request counts for. Behind a proxy we trust, the last address it names; an IPv6 address
 * counts by its /64, since one household holds a whole one.
 */
export const addressOf = (
  r: { readonly request: Request; readonly remote: string | null },
  config: Pick<Config, 'trustProxy'>,
): string => {
  const forwarded = r.request.headers.get('x-forwarded-for')
  const edge = r.request.headers.get('cf-connecting-ip')
  const told = config.trustProxy ? (edge ?? forwarded?.split(',').at(-1)?.trim() ?? null) : null
  const address = told ?? r.remote ?? 'unknown'
  if (!/^[0-9a-fA-F:.]{2,45}$/.test(address)) return 'unknown'
  if (!address.includes(':') || address.includes('.')) return address
  const [head = '', tail = ''] = address.split('::')
  const left = head.split(':').filter(Boolean)
  const right = tail.split(':').filter(Boolean)
  const gap = address.includes('::') ? new Array(8 - left.length - right.length).fill('0') : []
  return [...left, ...gap, ...right].slice(0, 4).join(':').toLowerCase()
}
