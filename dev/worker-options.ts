import type { MiniflareOptions } from 'miniflare'
import type { BuiltWorker } from '../scripts/build-worker'

/** Newest date the pinned workerd knows, as in wrangler.toml. */
export const COMPATIBILITY_DATE = '2026-05-03'

/** The built Worker in Miniflare as `wrangler.toml` puts it on the edge: files first, then the Worker. */
export const workerOptions = (
  built: BuiltWorker,
  bindings: Readonly<Record<string, string>>,
): MiniflareOptions => ({
  modules: [{ type: 'ESModule', path: 'worker.js', contents: built.script }],
  compatibilityDate: COMPATIBILITY_DATE,
  bindings: { ...bindings },
  r2Buckets: ['PHOTOS'],
  assets: {
    directory: built.assets,
    routerConfig: { has_user_worker: true },
    assetConfig: { html_handling: 'none', not_found_handling: 'none' },
  },
})
