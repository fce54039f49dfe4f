/** Where the built file of a name is served from, e.g. `docket.css` → `/assets/docket-1A2B3C4D.css`. */
export type Assets = (name: string) => string

/** Hashed file names by plain name, as the build writes them to `dist/assets/manifest.json`. */
export type Manifest = Readonly<Record<string, string>>

/** Looks names up in a manifest. A name that was not built throws: a page never links to nothing. */
export const assetsOf =
  (manifest: Manifest, prefix = '/assets/'): Assets =>
  (name) => {
    const file = Object.hasOwn(manifest, name) ? manifest[name] : undefined
    if (file === undefined) throw new Error(`No built file for ${name}`)
    return prefix + file
  }

/** Names without a build, for tests that only look at markup. */
export const plainAssets: Assets = (name) => `/assets/${name}`
