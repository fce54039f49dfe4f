import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { openHttpDb } from '../src/store/http'
import { migrate, pendingMigrations } from '../src/store/migrate'
import { migrations } from '../src/store/migrations'
import { contracting, settingFaults, varsOf } from './deploy-checks'
import { runScript } from './run-script'

const run = (command: string, args: readonly string[]): void => {
  const { status } = spawnSync(command, args, { stdio: 'inherit' })
  if (status !== 0) throw new Error(`${command} ${args[0] ?? ''} ended with ${status}`)
}

/** Asks the deployed program whether it is well; throws when it is not. */
const look = async (url: string): Promise<void> => {
  const answer = await fetch(new URL('/healthz', url))
  if (!answer.ok) throw new Error(`${url}/healthz answers ${answer.status}`)
  console.log(`${url} is well`)
}

/**
 * `deploy [--config=wrangler.toml] [--contract] [--dry-run]`: checks the settings, brings the schema
 * up to date, then deploys and looks whether it is well. What takes something away from the schema
 * is refused unless --contract is said. LIBSQL_AUTH_TOKEN comes from the environment.
 */
const main = async (): Promise<void> => {
  const args = process.argv.slice(2)
  const file = args.find((a) => a.startsWith('--config='))?.slice(9) ?? 'wrangler.toml'
  const dry = args.includes('--dry-run')
  const vars = varsOf(readFileSync(file, 'utf8'))
  const authToken = process.env.LIBSQL_AUTH_TOKEN || null
  const faults = settingFaults(vars, authToken)
  if (faults.length > 0) throw new Error(`not deployed:\n  ${faults.join('\n  ')}`)
  const url = vars.LIBSQL_URL ?? ''
  const db = openHttpDb({ url, timeoutMs: 30_000, ...(authToken ? { authToken } : {}) })
  try {
    const lacking = await pendingMigrations(db)
    const pending = migrations.slice(migrations.length - lacking)
    const taking = contracting(pending)
    if (taking.length > 0 && !args.includes('--contract'))
      throw new Error(
        `not deployed: ${taking.join(', ')} take something away. Deploy the version that no longer needs it first, then say --contract`,
      )
    console.log(`schema: ${lacking === 0 ? 'as it should be' : `${lacking} to apply`}`)
    run(process.execPath, ['scripts/run.mjs', 'build'])
    if (!dry) await migrate(db, Date.now())
  } finally {
    await db.close()
  }
  const wrangler = join('node_modules', 'wrangler', 'bin', 'wrangler.js')
  run(process.execPath, [wrangler, 'deploy', '--config', file, ...(dry ? ['--dry-run'] : [])])
  if (!dry) await look(vars.PUBLIC_URL ?? '')
}

runScript(import.meta.url, main)
