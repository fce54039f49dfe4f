/** The pure domain, in the order in which each may import the ones before it. */
export const DOMAIN = ['kernel', 'intake', 'quote', 'jobsheet', 'docket'] as const

/** Files that may read the environment or choose a driver. */
export const RIM: readonly string[] = [
  'src/node.ts',
  'src/node-assets.ts',
  'src/node-fetch.ts',
  'src/worker.ts',
  'src/config.ts',
]

/** Modules that stand for a driver: only the entries (and the store itself) choose among them. */
export const DRIVERS: readonly string[] = [
  'src/store/data-dir',
  'src/store/file',
  'src/store/http',
  'src/store/lock',
  'src/store/photo-folder',
  'src/store/photo-r2',
]

type Layer = {
  /** Other layers it may import; `pages/bench` names a part of one. */
  readonly layers: readonly string[]
  /** Packages; a name that ends in `*` stands for all that begin so. */
  readonly packages: readonly string[]
}

const domainBelow = (name: (typeof DOMAIN)[number]): Layer => ({
  layers: DOMAIN.slice(0, DOMAIN.indexOf(name)),
  packages: [],
})

const JSX = ['hono/jsx', 'hono/jsx/*', 'hono/html']

/** What each folder or top file of src may import besides itself. */
export const LAYERS: Readonly<Record<string, Layer>> = {
  kernel: domainBelow('kernel'),
  intake: domainBelow('intake'),
  quote: domainBelow('quote'),
  jobsheet: domainBelow('jobsheet'),
  docket: domainBelow('docket'),
  words: { layers: DOMAIN, packages: [] },
  store: {
    layers: DOMAIN,
    packages: [
      'drizzle-orm',
      'drizzle-orm/*',
      '@libsql/client/*',
      'libsql',
      'node:fs*',
      'node:path',
    ],
  },
  pages: { layers: [...DOMAIN, 'words'], packages: [...JSX, 'uqr'] },
  client: { layers: [...DOMAIN, 'words', 'pages/bench'], packages: [...JSX, 'idb', 'morphdom'] },
  config: { layers: [], packages: ['zod'] },
  routes: {
    layers: [...DOMAIN, 'words', 'store', 'pages', 'config'],
    packages: [...JSX, 'zod', 'uqr', 'client-zip'],
  },
  app: { layers: [...DOMAIN, 'words', 'store', 'pages', 'config', 'routes'], packages: ['hono'] },
  'node-assets': { layers: ['app', 'pages', 'routes'], packages: ['node:*'] },
  'node-fetch': { layers: ['app'], packages: ['node:*'] },
  'node-post': { layers: [], packages: ['node:*'] },
  'worker-post': { layers: [], packages: [] },
  node: {
    layers: [
      ...DOMAIN,
      'words',
      'store',
      'pages',
      'config',
      'routes',
      'app',
      'node-assets',
      'node-fetch',
      'node-post',
    ],
    packages: ['node:*', '@hono/node-server', '@hono/node-server/*'],
  },
  worker: {
    layers: [...DOMAIN, 'words', 'store', 'pages', 'config', 'routes', 'app', 'worker-post'],
    packages: [],
  },
}

/** zod checks what comes in from outside; in the domain at these borders only. */
export const ZOD_IN_DOMAIN: readonly string[] = [
  'src/docket/adjustment.ts',
  'src/docket/in-hand-kinds.ts',
  'src/docket/kinds.ts',
  'src/docket/line-shapes.ts',
  'src/docket/offer-shape.ts',
  'src/docket/office-kinds.ts',
  'src/docket/bench-kinds.ts',
  'src/docket/planned.ts',
  'src/docket/re-issued-kinds.ts',
  'src/quote/studio-profile.ts',
]
