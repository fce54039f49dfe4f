import type { StudioProfile } from '../../quote/studio-profile'
import type { Fault } from '../http/problem'
import { isZoneName } from '../zone'

const isLocale = (tag: string): boolean => {
  try {
    return Intl.getCanonicalLocales(tag).length === 1
  } catch {
    return false
  }
}

/**
 * What no shape can tell of a profile. Every request is answered in its locale and zone, and a plan
 * needs an hour to work in: saved without these, nothing could be opened again, not even to mend it.
 */
export const profileFaults = (p: StudioProfile): readonly Fault[] => [
  ...(isZoneName(p.timeZone) ? [] : [{ pointer: '/timeZone', code: 'ERR_VALUE' }]),
  ...(isLocale(p.locale) ? [] : [{ pointer: '/locale', code: 'ERR_VALUE' }]),
  ...(p.week.some((day) => day.length > 0) ? [] : [{ pointer: '/week', code: 'ERR_VALUE' }]),
]
