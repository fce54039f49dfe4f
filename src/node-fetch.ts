import { promisify } from 'node:util'
import { gzip } from 'node:zlib'
import type { createApp } from './app'

const pack = promisify(gzip)

/** Pages and their files; pictures are packed already, and an answer with an ETag keeps its bytes. */
const PACKED = /^text\/(html|css|javascript)\b/
const SMALL = 256

const takesGzip = (request: Request): boolean =>
  (request.headers.get('accept-encoding') ?? '').split(',').some((part) => {
    const [coding, weight = 'q=1'] = part.split(';').map((p) => p.trim())
    return coding === 'gzip' && Number(weight.replace('q=', '')) > 0
  })

/** The answer packed with gzip (RFC 9110, 8.4.1.3) where the browser takes that and it is worth it. */
export const packed = async (request: Request, response: Response): Promise<Response> => {
  const headers = new Headers(response.headers)
  const fit =
    PACKED.test(headers.get('content-type') ?? '') &&
    !headers.has('etag') &&
    !headers.has('content-encoding')
  if (!fit || response.body === null || request.method === 'HEAD') return response
  const bytes = new Uint8Array(await response.arrayBuffer())
  headers.append('vary', 'accept-encoding')
  headers.delete('content-length')
  const { status } = response
  if (bytes.byteLength < SMALL || !takesGzip(request))
    return new Response(bytes, { status, headers })
  headers.set('content-encoding', 'gzip')
  return new Response(new Uint8Array(await pack(bytes)), { status, headers })
}

/** How long a caller may take for its headers and for the whole request, ms; then the line is cut. */
export const SERVER_LIMITS = {
  headersTimeout: 15_000,
  requestTimeout: 120_000,
  connectionsCheckingInterval: 5_000,
  maxHeaderSize: 16_384,
} as const

type FromNode = { readonly incoming?: { readonly socket?: { readonly remoteAddress?: string } } }

/** The app as Node's server calls it: with the caller's address, its pages packed; the edge packs by itself. */
export const nodeFetch =
  (app: ReturnType<typeof createApp>) =>
  async (request: Request, env: unknown): Promise<Response> => {
    const socket = (env as FromNode | undefined)?.incoming?.socket
    return packed(request, await app.fetch(request, { remote: socket?.remoteAddress ?? null }))
  }
