import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { DEMO_CARS, type FilledDocket, fillDemo, NotEmptyError } from '../../dev/demo/fill-demo'
import { fold } from '../../src/docket/fold'
import { STATES } from '../../src/docket/states'
import { dataPaths } from '../../src/store/data-dir'
import { type Db, readAll } from '../../src/store/db'
import { openFileDb } from '../../src/store/file'
import { countHeads } from '../../src/store/heads'
import { selectLines } from '../../src/store/lines'
import { selectSettings } from '../../src/store/settings'

/** Wednesday, 16 September 2026, 15:00 UTC. */
const NOW = Date.UTC(2026, 8, 16, 15)
const ORIGIN = 'http://studio.example'

describe('the demo', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-demo-'))
  let filled: readonly FilledDocket[] = []
  let db: Db

  beforeAll(async () => {
    filled = await fillDemo(folder, ORIGIN, NOW)
    db = await openFileDb(dataPaths(folder).database)
  })
  afterAll(async () => {
    await db.close()
    rmSync(folder, { recursive: true, force: true })
  })

  const docketOf = async (car: string) => {
    const id = filled.find((d) => d.car === car)?.id ?? ''
    const [lines] = await readAll(db, [selectLines(id)])
    return fold(lines)
  }

  it('has a docket in every state there is, each where its story says', () => {
    expect(new Set(filled.map((d) => d.state))).toEqual(new Set(STATES))
    expect(filled.map((d) => [d.car, d.state])).toEqual(DEMO_CARS.map((c) => [c.id, c.ends]))
  })

  it('fills every group of the studio’s list, and the settings', async () => {
    const [groups, settings] = await readAll(db, [countHeads(), selectSettings()])
    expect(groups.map((g) => g.turn).sort()).toEqual(['bay', 'closed', 'ours', 'theirs'])
    expect(settings[0]?.rev).toBe(1)
  })

  it('gives the same ids in every run, and other keys', async () => {
    const again = mkdtempSync(join(tmpdir(), 'jambside-demo-'))
    const second = await fillDemo(again, ORIGIN, NOW, DEMO_CARS.slice(0, 4))
    rmSync(again, { recursive: true, force: true })
    expect(second.map((d) => d.id)).toEqual(filled.slice(0, 4).map((d) => d.id))
    expect(second[3]?.link).toMatch(/^http/)
    const links = filled.flatMap((d) => (d.link === null ? [] : [d.link]))
    expect(links.length).toBeGreaterThan(10)
    for (const d of second) expect(links).not.toContain(d.link)
  })

  it('has a question with its reply, and a second revision that differs from the first', async () => {
    const docket = await docketOf('bonnet-just-sprayed')
    expect(docket.decisions.map((d) => d.decision)).toEqual(['ask'])
    expect(docket.asked).toBe(false)
    const [first, second] = docket.revisions
    expect(second?.offer.total).toBeLessThan(first?.offer.total ?? 0)
    expect((await docketOf('silver-estate-question')).asked).toBe(true)
  })

  it('has a record with readings, a finding, a refused extra and a part that went back on', async () => {
    const { bench, extras, handedOver } = await docketOf('red-coupe-single-stage')
    expect(bench.readings.filter((r) => r.when === 'after')).toHaveLength(2)
    expect(bench.findings).toHaveLength(1)
    expect(bench.removals.map((r) => r.refitted)).toEqual([true])
    expect(extras.map((e) => e.decision?.decision)).toEqual(['refuse'])
    expect(handedOver?.account.total).toBeGreaterThan(0)
    const held = await docketOf('family-car-held')
    expect(held.extras.map((e) => e.decision)).toEqual([null])
  })

  it('leaves a folder alone that already holds a database', async () => {
    await expect(fillDemo(folder, ORIGIN, NOW)).rejects.toThrow(NotEmptyError)
  })
})
