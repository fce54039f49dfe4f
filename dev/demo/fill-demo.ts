import { existsSync } from 'node:fs'
import { dataPaths } from '../../src/store/data-dir'
import { BENCH_CARS } from './bench-cars'
import { openDemoApp } from './demo-app'
import type { DemoCar } from './demo-car'
import { openDocket, readDocket } from './demo-docket'
import { DEMO_STUDIO } from './demo-studio'
import { DESK_CARS } from './desk-cars'

export const DEMO_CARS: readonly DemoCar[] = [...DESK_CARS, ...BENCH_CARS]

export type FilledDocket = {
  readonly car: string
  readonly id: string
  readonly state: string
  readonly title: string
  readonly name: string
  /** A private link of the customer's, where a quote was sent. */
  readonly link: string | null
}

/** A database that is there already is not touched. */
export class NotEmptyError extends Error {
  constructor(folder: string) {
    super(
      `${folder} already holds a database: the demo leaves it alone (npm run demo -- --into another-folder)`,
    )
    this.name = 'NotEmptyError'
  }
}

/**
 * Fills an empty data folder with an invented studio and its dockets, through the program itself.
 * `now` is UTC milliseconds; everything happened in the weeks before it. Throws NotEmptyError.
 */
export const fillDemo = async (
  folder: string,
  origin: string,
  now: number,
  cars: readonly DemoCar[] = DEMO_CARS,
): Promise<readonly FilledDocket[]> => {
  if (existsSync(dataPaths(folder).database)) throw new NotEmptyError(folder)
  const app = await openDemoApp(folder, origin, now)
  try {
    app.clock.now = now - 120 * 86_400_000
    await app.send('PUT', '/api/v1/settings', { key: app.ownerKey, body: DEMO_STUDIO })
    const filled: FilledDocket[] = []
    for (const car of cars) {
      const d = await openDocket(app, car, now)
      await car.course(d)
      const { state, title } = await readDocket(d)
      if (app.clock.now > now) throw new Error(`${car.id} runs past the end of the demo`)
      filled.push({
        car: car.id,
        id: d.id,
        state: String(state),
        title: String(title),
        name: car.person.name,
        link: d.link,
      })
    }
    return filled
  } finally {
    await app.close()
  }
}
