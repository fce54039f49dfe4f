import { type JobModel, readyBound } from './model'
import { type CrewRule, type Placed, placeTasks } from './place'
import { listOrder } from './schedule'
import { smallRandom } from './small-random'

/** A chosen way through the job: which task first, and who does how many of them. */
export type Course = { readonly order: readonly number[]; readonly crews: readonly number[] }
export type Searched = {
  readonly placed: readonly Placed[]
  readonly finish: number
  readonly course: Course
}

const SEED = 0x1f123bb5
const RULES: readonly CrewRule[] = ['idle', 'most', 'one']

const crewMinutes = (placed: readonly Placed[]): number =>
  placed.reduce((sum, task) => sum + (task.end - task.start) * task.crew, 0)

/**
 * Best placing found for at most `people`. A smaller number of people is tried as well wherever it
 * could be as early, so one more person can never make the car ready later. A course already known
 * is tried first.
 */
export const searchCourse = (
  model: JobModel,
  people: number,
  starts: number,
  known?: Course,
): Searched => {
  let best: Searched | undefined
  const keep = (order: readonly number[], crew: number, rule: CrewRule): number => {
    const { placed, finish } = placeTasks(model, order, crew, rule)
    const better =
      !best ||
      finish < best.finish ||
      (finish === best.finish && crewMinutes(placed) < crewMinutes(best.placed))
    if (better) best = { placed, finish, course: { order, crews: placed.map((t) => t.crew) } }
    return finish
  }
  const base = model.tail.map((tail) => -tail)
  const bound = readyBound(model, people)
  for (let crew = people; crew >= 1; crew--) {
    const least = crew === people ? bound : readyBound(model, crew)
    if (best && (best as Searched).finish < least) break
    const rules: readonly CrewRule[] = crew === 1 ? ['one'] : RULES
    const random = smallRandom(SEED)
    const seen = new Set<string>()
    let own =
      known && crew === people ? keep(known.order, crew, known.crews) : Number.POSITIVE_INFINITY
    for (let k = 0; k < starts && own > least; k++) {
      const key = k < rules.length ? base : base.map((value) => value * (0.6 + 0.8 * random()))
      const order = listOrder(key, model.network)
      const rule = rules[k % rules.length]!
      const name = `${rule} ${order.join()}`
      if (seen.has(name)) continue
      seen.add(name)
      own = Math.min(own, keep(order, crew, rule))
    }
  }
  return best!
}
