import { leakOpen } from '../../intake/facts/damp'
import { peels } from '../../intake/facts/peeling'
import { vehicleKind } from '../../intake/facts/vehicle-kind'
import { authority } from '../../intake/questions/authority'
import { body } from '../../intake/questions/body'
import { bringHow } from '../../intake/questions/bring-how'
import { budget } from '../../intake/questions/budget'
import { cabinState } from '../../intake/questions/cabin-state'
import { claim } from '../../intake/questions/claim'
import { dangers } from '../../intake/questions/dangers'
import { deadline } from '../../intake/questions/deadline'
import { defects } from '../../intake/questions/defects'
import { driveConsent } from '../../intake/questions/drive-consent'
import { insured } from '../../intake/questions/insured'
import { leather } from '../../intake/questions/leather'
import { mileage } from '../../intake/questions/mileage'
import { oneOwner } from '../../intake/questions/one-owner'
import { otherWork } from '../../intake/questions/other-work'
import { ownerCheck } from '../../intake/questions/owner-check'
import { ownerConsent } from '../../intake/questions/owner-consent'
import { paintHistory } from '../../intake/questions/paint-history'
import { patina } from '../../intake/questions/patina'
import { polishedBefore } from '../../intake/questions/polished-before'
import { services } from '../../intake/questions/services'
import { size } from '../../intake/questions/size'
import { trim } from '../../intake/questions/trim'
import { use } from '../../intake/questions/use'
import { wheels } from '../../intake/questions/wheels'
import { wish } from '../../intake/questions/wish'
import type { Reader } from '../../intake/reader'
import type { Context } from '../context'
import type { RiskRule } from '../rules'
import { atLeast, fires, has, is, polishing } from './read'

const PRACTICE = 'common practice, no source'

/** Under this mileage a car of ten years has hardly been driven (own estimate). */
export const HARDLY_DRIVEN_KM = 30_000

const sailing = (r: Reader): boolean => is(r, body, 'boat', 'motorhome')

/** Work with a wait that no extra hand can shorten: drying, curing, a painter's or leak finder's answer. */
export const mustWait = (r: Reader): boolean =>
  has(r, dangers, 'wet', 'fresh-paint', 'soft-roof') ||
  has(r, services, 'protect') ||
  is(r, cabinState, 'family', 'neglected') ||
  has(r, defects, 'chips')

/** Paint that was never renewed on an old, hardly driven or sports car is worth more than shine. */
const worthKeeping = (r: Reader, c: Context): boolean => {
  if (!has(r, services, 'paint') || !is(r, paintHistory, 'original')) return false
  if (atLeast(r, c, 25) || (is(r, body, 'sports-car') && polishing(r))) return true
  return atLeast(r, c, 10) && (r.value(mileage) ?? Number.POSITIVE_INFINITY) < HARDLY_DRIVEN_KM
}

/** Another trade has to come first: body shop, leak finder, leather, wheel or trim workshop. */
export const needsOutside = (r: Reader): boolean =>
  peels(r) ||
  leakOpen(r) ||
  has(r, defects, 'rust', 'burn-through') ||
  is(r, wheels, 'cracked') ||
  has(r, leather, 'cracked')

/** What must be agreed: dates, prices, owners, trades outside. */
export const agreementRisks: readonly RiskRule[] = [
  {
    id: 'deadline-drying',
    severity: 'decide',
    weight: 81,
    decision: true,
    when: (r) => fires(r.value(deadline) !== undefined && mustWait(r)),
    source: PRACTICE,
  },
  {
    id: 'budget',
    severity: 'decide',
    weight: 46,
    decision: true,
    when: (r) =>
      fires(
        r.value(budget) !== undefined && (is(r, wish, 'show') || is(r, cabinState, 'neglected')),
      ),
    source: PRACTICE,
  },
  {
    id: 'deadline',
    severity: 'know',
    weight: 52,
    when: (r) => fires(r.value(deadline) !== undefined && !mustWait(r)),
    source: PRACTICE,
  },
  {
    id: 'by-the-hour',
    severity: 'decide',
    weight: 73,
    decision: true,
    when: (r) => fires(vehicleKind(r) !== 'car'),
    source: PRACTICE,
  },
  {
    id: 'gelcoat',
    severity: 'know',
    weight: 63,
    when: (r) =>
      fires(sailing(r) && (has(r, services, 'paint', 'protect') || has(r, dangers, 'film'))),
    source: PRACTICE,
  },
  {
    id: 'size-days',
    severity: 'know',
    weight: 30,
    when: (r) => fires(sailing(r) || (is(r, size, 'large') && polishing(r))),
    source: PRACTICE,
  },
  {
    id: 'outside-trade',
    severity: 'decide',
    weight: 82,
    decision: true,
    when: (r) => fires(r.value(deadline) !== undefined && needsOutside(r)),
    source: PRACTICE,
  },
  {
    id: 'hearsay',
    severity: 'know',
    weight: 42,
    least: 0.5,
    when: (r, c) =>
      fires(
        (is(r, oneOwner, 'few', 'many') || is(r, ownerCheck, 'more-owners')) &&
          (is(r, paintHistory, 'original', 'part') || is(r, polishedBefore, 'never')) &&
          atLeast(r, c, 8),
      ),
    source: PRACTICE,
  },
  {
    id: 'fragile-parts',
    severity: 'decide',
    weight: 48,
    decision: true,
    when: (r, c) =>
      fires(
        has(r, trim, 'sticky', 'wood', 'brittle-clips') ||
          (has(r, services, 'paint', 'wheels-off') && atLeast(r, c, 30)),
      ),
    source: PRACTICE,
  },
  {
    id: 'keep',
    severity: 'decide',
    weight: 43,
    decision: true,
    when: (r, c) => fires((r.value(patina)?.length ?? 0) > 0 || worthKeeping(r, c)),
    source: PRACTICE,
  },
  {
    id: 'stored',
    severity: 'know',
    weight: 40,
    when: (r) => fires(is(r, use, 'stored')),
    source: PRACTICE,
  },
  {
    id: 'damage-first',
    severity: 'know',
    weight: 44,
    when: (r) => {
      const seen = r.value(defects)
      return fires(r.value(claim) === true || (seen !== undefined && seen.length >= 3))
    },
    source: PRACTICE,
  },
  {
    id: 'whose-car',
    severity: 'decide',
    weight: 67,
    decision: true,
    when: (r) =>
      fires(is(r, authority, 'lease-finance', 'not-mine') && r.value(ownerConsent) !== true),
    source: PRACTICE,
  },
  {
    id: 'other-work',
    severity: 'decide',
    weight: 58,
    decision: true,
    when: (r) => fires((r.value(otherWork)?.length ?? 0) > 0),
    source: PRACTICE,
  },
  {
    id: 'no-road',
    severity: 'know',
    weight: 50,
    least: 0.5,
    when: (r) =>
      fires(
        r.value(driveConsent) === false ||
          r.value(insured) === false ||
          is(r, bringHow, 'drive-it', 'need-transport'),
      ),
    source: PRACTICE,
  },
]
