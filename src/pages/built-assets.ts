import type { Manifest } from './assets'

declare const __ASSETS__: Manifest | undefined

/** The manifest the build put into this bundle; empty where the source runs unbuilt. */
export const builtManifest: Manifest = typeof __ASSETS__ === 'undefined' ? {} : __ASSETS__
