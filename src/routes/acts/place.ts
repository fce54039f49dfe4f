import type { ListPlace } from '../../store/heads'
import { invalid } from '../http/problem'

/** A place in a list as an opaque text, and back. Throws 422 on a text that is none of ours. */
export const writePlace = (place: ListPlace): string =>
  `${place.sortAt.toString(36)}.${place.docket}`

export const readPlace = (text: string): ListPlace => {
  const [at = '', docket = ''] = text.split('.')
  const sortAt = /^[0-9a-z]{1,11}$/.test(at) ? Number.parseInt(at, 36) : Number.NaN
  if (!Number.isSafeInteger(sortAt) || !/^[A-Za-z0-9_-]{1,64}$/.test(docket))
    throw invalid([{ pointer: '/after', code: 'ERR_VALUE' }])
  return { sortAt, docket }
}
