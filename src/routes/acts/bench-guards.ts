import type { PaintNow } from '../../jobsheet/set-faults'
import { paintCaseOf } from '../../quote/paint-of'
import type { Call, Load } from '../route'
import type { Desk } from './desk'

type Any = Pick<Call<unknown, unknown, Load>, 'now' | 'studio'>

/** The paint of a docket's car as it stands at this moment. */
export const paintNow = ({ now, studio }: Any, desk: Desk): PaintNow => {
  const { limits } = studio.engine
  return {
    paint: paintCaseOf(desk.answers, new Date(now).getUTCFullYear()),
    bench: desk.docket.bench,
    ...(limits ? { limits } : {}),
    now,
  }
}
