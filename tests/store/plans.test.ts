import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { selectAccess, selectDocketAccesses, touchAccess } from '../../src/store/accesses'
import type { Stmt } from '../../src/store/db'
import { selectEstimate, selectEstimatesOf } from '../../src/store/estimates'
import {
  countHeads,
  listHeads,
  selectHead,
  selectHeadByReference,
  selectHeadsOfPerson,
  selectListed,
} from '../../src/store/heads'
import { findKey } from '../../src/store/idempotency'
import {
  selectLines,
  selectLinesById,
  selectLinesOfLast,
  selectMaxSeq,
} from '../../src/store/lines'
import { claimMessages } from '../../src/store/outbox'
import { selectPeople } from '../../src/store/people'
import { selectPhoto, selectPhotos } from '../../src/store/photos'
import { countRate } from '../../src/store/rates'
import { selectSession, touchSession } from '../../src/store/sessions'
import { selectSettings, selectSettingsRevision } from '../../src/store/settings'
import { selectTexts } from '../../src/store/texts'
import { copyBase } from '../support/base-db'

const after = { sortAt: 5, docket: 'd' }

/** Every statement of a request a customer or the bench waits for, and of the lists. */
const HOT: Readonly<Record<string, Stmt>> = {
  access: selectAccess('h').stmt,
  'accesses of a docket': selectDocketAccesses('d').stmt,
  'access touched': touchAccess('h', 1),
  session: selectSession('h', 1).stmt,
  'session touched': touchSession('h', 1),
  lines: selectLines('d').stmt,
  'lines after': selectLines('d', 7).stmt,
  'lines by id': selectLinesById(['a', 'b']).stmt,
  'lines of the last visit': selectLinesOfLast('d').stmt,
  'last place': selectMaxSeq('d').stmt,
  head: selectHead('d').stmt,
  'head by reference': selectHeadByReference('ABC-123').stmt,
  'one listed': selectListed('d').stmt,
  people: selectPeople('d').stmt,
  texts: selectTexts('d').stmt,
  photos: selectPhotos('d').stmt,
  photo: selectPhoto('d', 'p').stmt,
  estimate: selectEstimate('x').stmt,
  'estimates of a docket': selectEstimatesOf('d').stmt,
  'settings then': selectSettingsRevision(3).stmt,
  'kept answer': findKey('s', 'k', 1).stmt,
  rate: countRate('b', 1).stmt,
}

/** Statements that walk along an index from one end and stop at the limit. */
const WALKS: Readonly<Record<string, Stmt>> = {
  // By its own key, the newest first.
  'settings now': selectSettings().stmt,
  list: listHeads({ limit: 20 }).stmt,
  'list, next page': listHeads({ limit: 20, after }).stmt,
  'list of a turn': listHeads({ turn: 'studio', limit: 20 }).stmt,
  'list of a turn, next page': listHeads({ turn: 'studio', limit: 20, after }).stmt,
  'messages that are due': claimMessages({ claim: 'c', now: 1, leaseUntil: 2, limit: 5 }).stmt,
}

/** Statements that look at everything, known as such; docs/scale.md says what they cost. */
const WHOLE: Readonly<Record<string, Stmt>> = {
  'how many in each group': countHeads().stmt,
  'a search': listHeads({ q: 'saloon', limit: 20 }).stmt,
  'who was here before': selectHeadsOfPerson({ phone: '0100', email: 'a@example.org' }).stmt,
}

describe('the way the database takes', () => {
  let folder = ''
  let db: InstanceType<typeof Database>
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'jambside-plans-'))
    const file = join(folder, 'empty.db')
    await copyBase(file)
    db = new Database(file)
  })
  afterAll(() => {
    db.close()
    rmSync(folder, { recursive: true, force: true })
  })

  const planOf = ({ sql, args }: Stmt): readonly string[] =>
    (db.prepare(`EXPLAIN QUERY PLAN ${sql}`).all(...args) as { detail: string }[]).map(
      ({ detail }) => detail,
    )
  const scans = (plan: readonly string[]): readonly string[] =>
    plan.filter((d) => d.startsWith('SCAN ') && d !== 'SCAN CONSTANT ROW')

  it.each(Object.entries(HOT))('finds by key: %s', (_name, stmt) => {
    const plan = planOf(stmt)
    expect(scans(plan), plan.join('; ')).toEqual([])
  })

  it.each(Object.entries(WALKS))('walks an index without sorting: %s', (_name, stmt) => {
    const plan = planOf(stmt)
    expect(stmt.sql).toMatch(/\blimit\b/i)
    for (const scan of scans(plan))
      expect(scan).toMatch(/ USING (COVERING )?INDEX |^SCAN settings$/)
    expect(plan.filter((d) => /TEMP B-TREE/.test(d) && !/LAST/.test(d))).toEqual([])
  })

  it.each(Object.entries(WHOLE))('looks at everything, as known: %s', (_name, stmt) => {
    expect(scans(planOf(stmt)).length).toBeGreaterThan(0)
  })

  it('would show a statement without an index', () => {
    const careless = { sql: "SELECT * FROM line WHERE kind = 'noted'", args: [] }
    expect(scans(planOf(careless))).toEqual(['SCAN line'])
  })
})
