import { type LimitKey, limits } from '../../quote/paint/constants'
import { steps as catalogue } from '../../quote/steps'
import type { StudioProfile } from '../../quote/studio-profile'
import { english } from '../../words/en'
import type { Fault } from '../http/problem'
import { isZoneName } from '../zone'

const isLocale = (tag: string): boolean => {
  try {
    return Intl.getCanonicalLocales(tag).length === 1
  } catch {
    return false
  }
}

/** Sentences a studio may say its own way: notes, and the messages it sends. Cautions stay as they are. */
export const mayWord = (key: string): boolean =>
  Object.hasOwn(english, key) &&
  key !== 'message.amount' &&
  /^(risk\.[a-z0-9-]+(\.means)?|message\.[a-z-]+)$/.test(key)

const placesIn = (text: string): readonly string[] =>
  [...text.matchAll(/\{([^{}]+)\}/g)].map((m) => m[1] ?? '')

const wordFaults = (wording: NonNullable<StudioProfile['wording']>): readonly Fault[] =>
  Object.entries(wording).flatMap(([key, text]) => {
    if (!mayWord(key)) return [{ pointer: `/wording/${key}`, code: 'ERR_UNKNOWN_FIELD' }]
    const known = placesIn(english[key] ?? '')
    const plain = text.replace(/\{[^{}]+\}/g, '')
    const wrong = placesIn(text).some((p) => !known.includes(p)) || /[{}]/.test(plain)
    // A message that lost its link would leave the customer outside.
    const lost = key.startsWith('message.') && known.includes('link') && !text.includes('{link}')
    return wrong || lost ? [{ pointer: `/wording/${key}`, code: 'ERR_PLACES' }] : []
  })

const limitFaults = (own: NonNullable<StudioProfile['limits']>): readonly Fault[] =>
  Object.entries(own).flatMap(([key, value]) => {
    const limit = Object.hasOwn(limits, key) ? limits[key as LimitKey] : undefined
    if (limit === undefined) return [{ pointer: `/limits/${key}`, code: 'ERR_UNKNOWN_FIELD' }]
    if (value >= limit.hardMin && value <= limit.hardMax) return []
    return [
      {
        pointer: `/limits/${key}`,
        code: 'ERR_HARD_LIMIT',
        params: { min: limit.hardMin, max: limit.hardMax },
      },
    ]
  })

/**
 * What no shape can tell of a profile. Every request is answered in its locale and zone, and a plan
 * needs an hour to work in: saved without these, nothing could be opened again, not even to mend it.
 */
export const profileFaults = (p: StudioProfile): readonly Fault[] => [
  ...(isZoneName(p.timeZone) ? [] : [{ pointer: '/timeZone', code: 'ERR_VALUE' }]),
  ...(isLocale(p.locale) ? [] : [{ pointer: '/locale', code: 'ERR_VALUE' }]),
  ...(p.week.some((day) => day.length > 0) ? [] : [{ pointer: '/week', code: 'ERR_VALUE' }]),
  ...Object.keys(p.steps).flatMap((id) =>
    catalogue.some((s) => s.id === id)
      ? []
      : [{ pointer: `/steps/${id}`, code: 'ERR_UNKNOWN_STEP' }],
  ),
  ...wordFaults(p.wording ?? {}),
  ...limitFaults(p.limits ?? {}),
]
