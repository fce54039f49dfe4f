import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { contracting, settingFaults, varsOf } from '../../scripts/deploy-checks'
import { migrations } from '../../src/store/migrations'
import { root } from '../borders/source-files'

const good = {
  LIBSQL_URL: 'libsql://studio.example.org',
  PUBLIC_URL: 'https://studio.example.org',
  TRUST_PROXY: '0',
}
const step = (sql: string) => ({ n: 9, name: 'step', hash: 'h', statements: [sql] })

describe('a deployment', () => {
  it('reads the settings of the file and refuses its examples', () => {
    const vars = varsOf(readFileSync(join(root, 'wrangler.toml'), 'utf8'))
    expect(Object.keys(vars).sort()).toEqual(['LIBSQL_URL', 'PUBLIC_URL', 'TRUST_PROXY'])
    expect(settingFaults(vars, 'token')).toEqual([
      `LIBSQL_URL is still the example: ${vars.LIBSQL_URL}`,
      `PUBLIC_URL is still the example: ${vars.PUBLIC_URL}`,
    ])
  })
  it('takes whole settings', () => expect(settingFaults(good, 'token')).toEqual([]))
  it.each([
    ['no database', { ...good, LIBSQL_URL: '' }, 'token', /^LIBSQL_URL is missing/],
    ['no token', good, null, /^LIBSQL_AUTH_TOKEN is not set/],
    ['plain http', { ...good, PUBLIC_URL: 'http://studio.example.org' }, 'token', /https/],
    ['a proxy believed', { ...good, TRUST_PROXY: '1' }, 'token', /TRUST_PROXY must be 0/],
    ['a secret in the file', { ...good, OWNER_KEY: 'k'.repeat(43) }, 'token', /secret put/],
    ['no address at all', { ...good, PUBLIC_URL: 'studio' }, 'token', /PUBLIC_URL must be an http/],
  ])('says what is wrong: %s', (_what, vars, token, said) => {
    const faults = settingFaults(vars, token)
    expect(faults).toHaveLength(1)
    expect(faults[0]).toMatch(said)
  })
  it.each([
    ['CREATE TABLE a (x)', 0],
    ['ALTER TABLE a ADD COLUMN y', 0],
    ['CREATE INDEX i ON a (y)', 0],
    ['DROP TABLE a', 1],
    ['drop index i', 1],
    ['ALTER TABLE a DROP COLUMN y', 1],
    ['ALTER TABLE a RENAME TO b', 1],
    ['DELETE FROM a', 1],
  ])('knows what takes something away: %s', (sql, n) => {
    expect(contracting([step(sql)])).toHaveLength(n)
  })
  it('only adds with the migrations there are', () => expect(contracting(migrations)).toEqual([]))
  it('stops before anything is built or sent when a setting is wrong', () => {
    const { status, stderr, stdout } = spawnSync(
      process.execPath,
      ['scripts/run.mjs', 'deploy', '--dry-run'],
      { cwd: root, encoding: 'utf8', env: { PATH: process.env.PATH ?? '' } },
    )
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr).toMatch(/^not deployed:\n {2}LIBSQL_URL is still the example/)
  })
})
