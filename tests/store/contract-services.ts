import { describe, expect, it } from 'vitest'
import {
  type Access,
  insertAccess,
  isLive,
  revokeAccess,
  selectAccess,
  selectAccesses,
  selectDocketAccesses,
  tradeLink,
} from '../../src/store/accesses'
import type { Query } from '../../src/store/db'
import { readAll, readOne } from '../../src/store/db'
import { upsertHead } from '../../src/store/heads'
import { deleteExpiredKeys, findKey, finishKey, reserveKey } from '../../src/store/idempotency'
import {
  claimMessages,
  countMessages,
  deleteDelivered,
  enqueue,
  messageDone,
  messageFailed,
} from '../../src/store/outbox'
import { countRate, deleteOldRates } from '../../src/store/rates'
import {
  deleteEndedSessions,
  deleteSession,
  deleteSessionsOf,
  insertSession,
  selectSession,
  touchSession,
} from '../../src/store/sessions'
import { dbErrorOf } from './contract'
import { aHead } from './rows'
import type { TestStore } from './stores'

const key = (hash: string, some: Partial<Access> = {}): Access => ({
  hash,
  kind: 'owner',
  docket: null,
  label: 'laptop',
  createdAt: 10,
  expiresAt: null,
  usedAt: null,
  revokedAt: null,
  parent: null,
  ...some,
})

/** The tables that serve requests: keys, sessions, repeated requests, messages, rates. */
export const serviceContract = (store: () => TestStore): void => {
  const send = async <T>({ stmt, map }: Query<T>): Promise<readonly T[]> => {
    const [rows = []] = await store().db.write([stmt])
    return map(rows)
  }

  describe('keys', () => {
    it('come back by hash, kind and docket', async () => {
      const customer = key('c', { kind: 'customer', docket: 'd1' })
      const rows = [key('o', { createdAt: 1 }), key('b', { kind: 'bench', createdAt: 2 }), customer]
      await store().db.write([upsertHead(aHead('d1')), ...rows.map(insertAccess)])
      const [one, studio, docket] = await readAll(store().db, [
        selectAccess('c'),
        selectAccesses(['owner', 'bench']),
        selectDocketAccesses('d1'),
      ])
      expect(one).toEqual([customer])
      expect(studio.map((row) => row.hash)).toEqual(['b', 'o'])
      expect(docket).toEqual([customer])
      expect(await send(revokeAccess('o', 50))).toMatchObject([{ revokedAt: 50 }])
      expect(await send(revokeAccess('o', 60))).toEqual([])
    })

    it.each([
      ['a fresh key', {}, true],
      ['a key at its last moment', { expiresAt: 101 }, true],
      ['a key that has just expired', { expiresAt: 100 }, false],
      ['a revoked key', { revokedAt: 1 }, false],
      ['a device key that was used', { usedAt: 1 }, true],
      ['a sign-in link that was used', { kind: 'signin', usedAt: 1 }, false],
    ] as const)('%s is live: %#', (_, some, live) => {
      expect(isLive(key('x', some), 100)).toBe(live)
    })

    it('a sign-in link makes one device, and the second trade leaves nothing behind', async () => {
      await store().db.write([insertAccess(key('link', { kind: 'signin', expiresAt: 99 }))])
      const session = { rights: 'owner', createdAt: 20, seenAt: 20, expiresAt: 90 } as const
      const trade = (hash: string) => [
        ...tradeLink('link', key(hash, { createdAt: 20 })),
        insertSession({ hash: `s-${hash}`, access: hash, ...session }),
      ]
      await store().db.write(trade('first'))
      const error = await dbErrorOf(store().db.write(trade('second')))
      expect(error).toMatchObject({ code: 'conflict', constraint: 'access.parent' })
      const [link, second, kept] = await readAll(store().db, [
        selectAccess('link'),
        selectAccess('second'),
        selectSession('s-first', 30),
      ])
      expect([link[0]?.usedAt, second, kept.length]).toEqual([20, [], 1])
    })
  })

  it('sessions end by time, by idling, and by signing out', async () => {
    const session = { access: 'o', rights: 'bench', createdAt: 0, seenAt: 10 } as const
    await store().db.write([
      insertAccess(key('o')),
      ...['a', 'b', 'c'].map((hash) => insertSession({ ...session, hash, expiresAt: 100 })),
    ])
    const found = async (hash: string, now: number, seenAfter?: number) =>
      (await readOne(store().db, selectSession(hash, now, seenAfter))) !== null
    expect([await found('a', 99), await found('a', 100)]).toEqual([true, false])
    expect([await found('a', 50, 9), await found('a', 50, 10)]).toEqual([true, false])
    await store().db.write([touchSession('a', 40), deleteSession('b')])
    expect([await found('a', 50, 39), await found('b', 50)]).toEqual([true, false])
    await store().db.write([deleteEndedSessions(99)])
    expect(await found('c', 50)).toBe(true)
    await store().db.write([deleteSessionsOf('o')])
    expect(await found('c', 50)).toBe(false)
  })

  it('a request is answered once under its key, until the key expires', async () => {
    const row = { scope: 's', key: 'k', fingerprint: 'f', status: null, body: null, at: 10 }
    const reserve = (at: number) => reserveKey({ ...row, at, expiresAt: at + 100 })
    await store().db.write([...reserve(10), upsertHead(aHead('d1'))])
    await store().db.write([finishKey(row, { status: 201, body: '{"id":1}' })])
    const kept = { ...row, expiresAt: 110, status: 201, body: '{"id":1}' }
    expect(await readOne(store().db, findKey('s', 'k', 109))).toEqual(kept)
    expect(await readOne(store().db, findKey('s', 'k', 110))).toBeNull()
    const error = await dbErrorOf(
      store().db.write([...reserve(109), upsertHead(aHead('d1', { rev: 9 }))]),
    )
    expect(error.constraint).toBe('idempotency.scope, idempotency.key')
    await store().db.write(reserve(110))
    await store().db.write([deleteExpiredKeys(210)])
    expect(await readOne(store().db, findKey('s', 'k', 111))).toBeNull()
  })

  it('a message is held by one claim at a time and tried again when the lease is lost', async () => {
    const message = { kind: 'mail', docket: null, payload: { to: 'p' }, nextAt: 10 }
    const claim = (name: string, now: number, limit = 5) =>
      send(claimMessages({ claim: name, now, leaseUntil: now + 30, limit }))
    await store().db.write([
      enqueue({ ...message, id: 'm1', dedupe: 'one' }),
      enqueue({ ...message, id: 'm2', dedupe: 'one' }),
      enqueue({ ...message, id: 'm3', dedupe: 'three', nextAt: 11 }),
    ])
    expect(await claim('early', 9)).toEqual([])
    expect(await claim('A', 20, 1)).toMatchObject([
      { id: 'm1', attempts: 1, claim: 'A', leaseUntil: 50, payload: { to: 'p' } },
    ])
    expect(await claim('B', 49)).toMatchObject([{ id: 'm3' }])
    expect(await claim('C', 50)).toMatchObject([{ id: 'm1', attempts: 2 }])
    expect(await send(messageDone('m1', 'A'))).toEqual([])
    expect(await send(messageDone('m1', 'C'))).toMatchObject([{ status: 'done', claim: null }])
    expect(await send(messageFailed('m3', 'B', 70))).toMatchObject([{ status: 'waiting' }])
    expect(await claim('D', 69)).toEqual([])
    expect(await claim('E', 70)).toMatchObject([{ id: 'm3', attempts: 2 }])
    expect(await send(messageFailed('m3', 'E', null))).toMatchObject([{ status: 'dead' }])
    const counted = (await readAll(store().db, [countMessages()]))[0]
    expect(counted).toEqual([
      { status: 'dead', count: 1 },
      { status: 'done', count: 1 },
    ])
    await store().db.write([deleteDelivered(10)])
    expect(await readOne(store().db, countMessages())).toEqual({ status: 'dead', count: 1 })
    expect((await readAll(store().db, [countMessages()]))[0]).toHaveLength(2)
    await store().db.write([deleteDelivered(11)])
    expect((await readAll(store().db, [countMessages()]))[0]).toHaveLength(1)
  })

  it('requests are counted by bucket and window', async () => {
    expect(await send(countRate('ip:1', 7))).toEqual([1])
    expect(await send(countRate('ip:1', 7, 4))).toEqual([5])
    expect(await send(countRate('ip:1', 8))).toEqual([1])
    expect(await send(countRate('ip:2', 7))).toEqual([1])
    await store().db.write([deleteOldRates(8)])
    expect(await send(countRate('ip:1', 7))).toEqual([1])
    expect(await send(countRate('ip:1', 8))).toEqual([2])
  })
}
