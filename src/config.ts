import * as z from 'zod'

const blank = (v: unknown): unknown => (v === '' ? undefined : v)
const optional = <T extends z.ZodType>(schema: T) => z.preprocess(blank, schema.optional())

const schema = z.object({
  HOST: optional(z.string()),
  PORT: optional(z.string().regex(/^\d{1,5}$/, 'must be a port number from 0 to 65535')),
  DATA_DIR: optional(z.string()),
  LIBSQL_URL: optional(
    z.string().regex(/^(libsql|https?|file):/, 'must start with libsql:, https:, http: or file:'),
  ),
  LIBSQL_AUTH_TOKEN: optional(z.string()),
  OWNER_KEY: optional(
    z
      .string()
      .regex(/^[A-Za-z0-9_-]{43,}$/, 'must be at least 43 base64url characters (256 random bits)'),
  ),
  PUBLIC_URL: optional(z.url({ protocol: /^https?$/, error: 'must be an http(s) address' })),
  TRUST_PROXY: optional(z.enum(['0', '1', 'true', 'false'], 'must be 1 or 0')),
})

export type Config = {
  readonly host: string
  readonly port: number
  readonly dataDir: string
  readonly libsqlUrl: string | null
  readonly libsqlToken: string | null
  readonly ownerKey: string | null
  /** Origin the public reaches us at, without a slash at the end; null: taken from the request. */
  readonly publicOrigin: string | null
  readonly trustProxy: boolean
}

/** Reads the environment once. Throws with one plain line per mistake. */
export const parseConfig = (env: Readonly<Record<string, unknown>>): Config => {
  const parsed = schema.safeParse(env)
  if (!parsed.success) {
    const lines = parsed.error.issues.map((i) => `${i.path.join('.')} ${i.message}`)
    throw new Error(`The settings of this process cannot be used:\n  ${lines.join('\n  ')}`)
  }
  const v = parsed.data
  const port = Number(v.PORT ?? 8787)
  if (port > 65_535) throw new Error('PORT must be a port number from 0 to 65535')
  return {
    host: v.HOST ?? '127.0.0.1',
    port,
    dataDir: v.DATA_DIR ?? 'data',
    libsqlUrl: v.LIBSQL_URL ?? null,
    libsqlToken: v.LIBSQL_AUTH_TOKEN ?? null,
    ownerKey: v.OWNER_KEY ?? null,
    publicOrigin: v.PUBLIC_URL === undefined ? null : new URL(v.PUBLIC_URL).origin,
    trustProxy: v.TRUST_PROXY === '1' || v.TRUST_PROXY === 'true',
  }
}
