import type { EventRule } from '../rules'
import { cabinEvents } from './cabin'
import { filmEvents } from './film'
import { paintEvents } from './paint'
import { wheelEvents } from './wheels'

/** Everything that may turn up on the bench, by theme. */
export const events: readonly EventRule[] = [
  ...filmEvents,
  ...paintEvents,
  ...cabinEvents,
  ...wheelEvents,
]
