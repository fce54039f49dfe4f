import { parseConfig } from '../src/config'
import type { Migration } from '../src/store/migrate'

/** The plain strings under [vars] of a wrangler file. */
export const varsOf = (toml: string): Readonly<Record<string, string>> => {
  const part = /^\[vars\]\n([\s\S]*?)(?=^\[|$(?![\s\S]))/m.exec(toml)?.[1] ?? ''
  const lines = [...part.matchAll(/^([A-Z_]+) = "([^"]*)"/gm)]
  return Object.fromEntries(lines.map(([, name = '', value = '']) => [name, value]))
}

/** Everything that keeps these settings from being deployed, one plain line each. */
export const settingFaults = (
  vars: Readonly<Record<string, string>>,
  token: string | null,
): readonly string[] => {
  const faults: string[] = []
  try {
    parseConfig(vars)
  } catch (error) {
    faults.push(error instanceof Error ? error.message : String(error))
  }
  for (const name of ['LIBSQL_URL', 'PUBLIC_URL'] as const) {
    const value = vars[name]
    if (!value) faults.push(`${name} is missing under [vars]`)
    else if (/\.invalid\b/.test(value)) faults.push(`${name} is still the example: ${value}`)
  }
  if (vars.PUBLIC_URL?.startsWith('http:'))
    faults.push('PUBLIC_URL must be https: cookies are sent over nothing else')
  if (vars.TRUST_PROXY === '1' || vars.TRUST_PROXY === 'true')
    faults.push('TRUST_PROXY must be 0 on the edge, which names the caller itself')
  if (/^(libsql|https):/.test(vars.LIBSQL_URL ?? '') && !token)
    faults.push('LIBSQL_AUTH_TOKEN is not set: the schema cannot be brought up to date')
  for (const secret of ['LIBSQL_AUTH_TOKEN', 'OWNER_KEY'])
    if (vars[secret]) faults.push(`${secret} stands in the file: put it with wrangler secret put`)
  return faults
}

/**
 * Migrations that take something away. The version that still runs may need it, so they go with
 * `--contract`, once nothing old runs any more; all others only add and go before the new version.
 */
export const contracting = (pending: readonly Migration[]): readonly string[] =>
  pending
    .filter((m) =>
      m.statements.some((sql) =>
        /^\s*(DROP\s|ALTER\s+TABLE\s+\S+\s+(DROP|RENAME)\b|DELETE\s|UPDATE\s)/i.test(sql),
      ),
    )
    .map((m) => `${m.n} ${m.name}`)
