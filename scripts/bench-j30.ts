import { existsSync, readFileSync } from 'node:fs'
import { schedule } from '../src/quote/plan/schedule'
import { STARTS } from '../src/quote/plan/task'

// The 480 public j30 instances (Kolisch and Sprecher, EJOR 96, 1997, 205-216) are kept outside the
// repository; without them this developer benchmark says so and ends.
const file = new URL('../../shared/data/j30.json', import.meta.url)

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

const run = (instances: readonly Instance[], starts: number) => {
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
  const ms = performance.now() - began
  const mean = ((100 * deviation) / instances.length).toFixed(3)
  console.log(
    `starts ${starts}: mean deviation ${mean} %, optimum met ${met}/${instances.length}, below it ${below}, ` +
      `${(passes / instances.length).toFixed(1)} passes, ${(ms / instances.length).toFixed(3)} ms an instance`,
  )
}

if (existsSync(file)) {
  const { instances } = JSON.parse(readFileSync(file, 'utf8')) as { instances: Instance[] }
  run(instances, 1)
  for (const starts of [1, STARTS, 60]) run(instances, starts)
} else {
  console.log(`no j30 data at ${file.pathname}: nothing compared`)
}
