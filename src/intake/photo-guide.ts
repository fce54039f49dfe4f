import { isWet } from './facts/damp'
import { hasFilm } from './facts/film'
import { has } from './facts/has'
import { vehicleKind } from './facts/vehicle-kind'
import { wants } from './facts/wants'
import { dangers } from './questions/dangers'
import type { Reader } from './reader'

export const PHOTO_SUBJECTS = [
  'front',
  'rear',
  'left',
  'right',
  'sun-flank',
  'sun-bonnet',
  'film-edge',
  'jamb',
  'seats',
  'carpet',
  'boot-well',
  'damp-coin',
  'other',
] as const
export type PhotoSubject = (typeof PHOTO_SUBJECTS)[number]

/**
 * The pictures that would help with this car, in walking order: even shade shows colour and panels,
 * direct sun shows marks in the topcoat. The last is anything else. Common practice, no source.
 */
export const photoGuide = (r: Reader): readonly PhotoSubject[] => {
  const paint = wants(r, 'paint', 'protect')
  const cabin = vehicleKind(r) === 'car' && wants(r, 'cabin')
  const damp = isWet(r) || has(r, dangers, 'growth')
  const when: readonly (readonly [PhotoSubject, boolean])[] = [
    ['front', true],
    ['rear', true],
    ['left', true],
    ['right', true],
    ['sun-flank', paint],
    ['sun-bonnet', paint && vehicleKind(r) === 'car'],
    ['film-edge', hasFilm(r) || wants(r, 'stickers')],
    ['jamb', paint && vehicleKind(r) === 'car'],
    ['seats', cabin],
    ['carpet', cabin || isWet(r)],
    ['boot-well', isWet(r)],
    ['damp-coin', damp],
    ['other', true],
  ]
  return when.flatMap(([subject, matters]) => (matters ? [subject] : []))
}
