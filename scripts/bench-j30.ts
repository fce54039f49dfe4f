import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { schedule } from '../src/quote/plan/schedule'
import { STARTS } from '../src/quote/plan/task'
import { runScript } from './run-script'

// The 480 public j30 instances (Kolisch and Sprecher, EJOR 96, 1997, 205-216) are kept outside the
// repository; without them this developer benchmark says so and ends.
export const j30File = fileURLToPath(new URL('../../shared/data/j30.json', import.meta.url))

type Instance = {
  readonly name: string
  readonly optimum: number
  readonly capacity: readonly number[]
  readonly duration: readonly number[]
  readonly demand: readonly (readonly number[])[]
  readonly successors: readonly (readonly number[])[]
}

const activitiesOf = (instance: Instance) =>
  instance.duration.map((minutes, i) => ({
    id: String(i),
    minutes,
    demand: instance.demand[i]!,
    after: instance.successors.flatMap((list, from) =>
      list.includes(i) ? [{ id: String(from), lag: 0 }] : [],
    ),
  }))

/** The instances; throws where they are not. */
export const readJ30 = (): readonly Instance[] =>
  (JSON.parse(readFileSync(j30File, 'utf8')) as { instances: Instance[] }).instances

/** Schedules every instance with so many starts; `deviation` is the mean share above the optimum. */
export const compareJ30 = (instances: readonly Instance[], starts: number) => {
  let deviation = 0
  let met = 0
  let below = 0
  let passes = 0
  const began = performance.now()
  for (const instance of instances) {
    const result = schedule(activitiesOf(instance), instance.capacity, { starts })
    if (!result.ok) throw new Error(`${instance.name}: ${result.error}`)
    deviation += result.value.finish / instance.optimum - 1
    passes += result.value.passes
    if (result.value.finish === instance.optimum) met++
    if (result.value.finish < instance.optimum) below++
  }
  return {
    instances: instances.length,
    deviation: deviation / instances.length,
    met,
    below,
    passes: passes / instances.length,
    ms: (performance.now() - began) / instances.length,
  }
}

const run = (instances: readonly Instance[], starts: number): void => {
  const found = compareJ30(instances, starts)
  console.log(
    `starts ${starts}: mean deviation ${(100 * found.deviation).toFixed(3)} %, optimum met ` +
      `${found.met}/${found.instances}, below it ${found.below}, ${found.passes.toFixed(1)} passes, ` +
      `${found.ms.toFixed(3)} ms an instance`,
  )
}

runScript(import.meta.url, () => {
  if (!existsSync(j30File)) {
    console.log(`no j30 data at ${j30File}: nothing compared`)
    return
  }
  const instances = readJ30()
  run(instances, 1)
  for (const starts of [1, STARTS, 60]) run(instances, starts)
})
