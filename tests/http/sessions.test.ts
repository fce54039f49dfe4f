import { afterAll, beforeAll, expect, it } from 'vitest'
import { ABSOLUTE_MS, IDLE_MS } from '../../src/routes/http/credentials'
import { type Caller, callerOf } from '../support/caller'
import { openWorld, type World } from '../support/world'
import { signIn } from './stages'

let world: World
let call: Caller
beforeAll(async () => {
  world = await openWorld({ runtime: 'node' })
  call = callerOf(world)
})
afterAll(() => world.close())

const DAY = 86_400_000
const pass = (ms: number): void => {
  if (world.clock) world.clock.now += ms
}
const opens = async (cookie: string): Promise<number> =>
  (await call('GET', '/api/v1/dockets', { headers: { cookie } })).status
const headers = (cookie: string) => ({ cookie, 'sec-fetch-site': 'same-origin' })

it('a browser that is used stays signed in, up to its longest time and no longer', async () => {
  const cookie = await signIn(call, world.ownerKey, 'owner')
  const began = world.clock?.now ?? 0
  while ((world.clock?.now ?? 0) - began + 5 * DAY < ABSOLUTE_MS) {
    pass(5 * DAY)
    expect(await opens(cookie)).toBe(200)
  }
  pass(began + ABSOLUTE_MS - (world.clock?.now ?? 0) - 1)
  expect(await opens(cookie)).toBe(200)
  pass(1)
  expect(await opens(cookie)).toBe(401)
})

it('a browser that is not used is signed out after the idle time', async () => {
  const [used, idle] = [
    await signIn(call, world.ownerKey, 'bench'),
    await signIn(call, world.ownerKey, 'bench'),
  ]
  pass(IDLE_MS - 1)
  expect(await opens(used)).toBe(200)
  pass(1)
  expect(await opens(idle)).toBe(401)
  expect(await opens(used)).toBe(200)
})

it('signing out ends the session on the server, not only in the browser', async () => {
  const cookie = await signIn(call, world.ownerKey, 'bench')
  expect((await call('DELETE', '/api/v1/session', { headers: headers(cookie) })).status).toBe(204)
  expect(await opens(cookie)).toBe(401)
})

it('signing out everywhere ends every other device and key, and only the owner may', async () => {
  const here = await signIn(call, world.ownerKey, 'owner')
  const there = await signIn(call, world.ownerKey, 'owner')
  const bench = await signIn(call, world.ownerKey, 'bench')
  const all = (cookie: string) => call('DELETE', '/api/v1/devices', { headers: headers(cookie) })
  expect((await all(bench)).status).toBe(403)
  expect([await opens(here), await opens(there), await opens(bench)]).toEqual([200, 200, 200])
  expect((await all(here)).status).toBe(204)
  expect([await opens(here), await opens(there), await opens(bench)]).toEqual([200, 401, 401])
  const listed = (await call('GET', '/api/v1/devices', { key: world.ownerKey })).json.devices
  expect(listed).toHaveLength(1)
})

it('a new sign-in gets a key of its own, whatever the browser had before', async () => {
  const one = await signIn(call, world.ownerKey, 'owner')
  expect(await signIn(call, world.ownerKey, 'owner')).not.toBe(one)
})
