import { existsSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import type { Assets } from './app'
import type { Manifest } from './pages/assets'
import { SECURITY_HEADERS } from './routes/http/headers'

const TYPES: Readonly<Record<string, string>> = {
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  svg: 'image/svg+xml',
  webmanifest: 'application/manifest+json',
}

/** The built files under dist/assets; only names of the manifest are served, with the same headers as on the edge. */
export const openAssets = (
  folder = resolve('dist/assets'),
): { readonly assets: Assets; readonly manifest: Manifest } => {
  const file = join(folder, 'manifest.json')
  if (!existsSync(file)) throw new Error(`No built files in ${folder}: run npm run build first`)
  const manifest = JSON.parse(readFileSync(file, 'utf8')) as Manifest
  const names = new Set(Object.values(manifest))
  const assets: Assets = {
    fetch: async (request) => {
      const name = new URL(request.url).pathname.replace(/^\/assets\//, '')
      if (!names.has(name)) return null
      const headers = new Headers(SECURITY_HEADERS)
      headers.set('content-type', TYPES[name.split('.').at(-1) ?? ''] ?? 'application/octet-stream')
      headers.set('cache-control', 'public, max-age=31536000, immutable')
      // The worker's file lies beside the others; it may look after the bench and nothing else.
      headers.set('service-worker-allowed', '/bench/')
      return new Response(new Uint8Array(readFileSync(join(folder, name))), { headers })
    },
  }
  return { assets, manifest }
}
