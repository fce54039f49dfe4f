import { authority } from '../../intake/questions/authority'
import { body } from '../../intake/questions/body'
import { claim } from '../../intake/questions/claim'
import { dangers } from '../../intake/questions/dangers'
import { deadline } from '../../intake/questions/deadline'
import { defects } from '../../intake/questions/defects'
import { driveConsent } from '../../intake/questions/drive-consent'
import { leather } from '../../intake/questions/leather'
import { oneOwner } from '../../intake/questions/one-owner'
import { paintHistory } from '../../intake/questions/paint-history'
import { payer } from '../../intake/questions/payer'
import { polishedBefore } from '../../intake/questions/polished-before'
import { services } from '../../intake/questions/services'
import { size } from '../../intake/questions/size'
import { trim } from '../../intake/questions/trim'
import { use } from '../../intake/questions/use'
import { wheels } from '../../intake/questions/wheels'
import { wish } from '../../intake/questions/wish'
import type { Reader } from '../../intake/reader'
import type { RiskRule } from '../rules'
import { atLeast, fires, has, is, polishing } from './read'

const PRACTICE = 'common practice, no source'

/** Bodies whose work is offered by the hour after a look, never for a fixed price. */
export const BY_THE_HOUR = ['motorcycle', 'boat', 'motorhome'] as const

const sailing = (r: Reader): boolean => is(r, body, 'boat', 'motorhome')

/** Work with a wait that no extra hand can shorten: drying, curing, a painter's or leak finder's answer. */
export const mustWait = (r: Reader): boolean =>
  has(r, dangers, 'wet', 'fresh-paint', 'soft-roof') ||
  has(r, services, 'protect') ||
  has(r, defects, 'chips')

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
    when: (r) => fires(is(r, body, ...BY_THE_HOUR)),
    source: PRACTICE,
  },
  {
    id: 'gelcoat',
    severity: 'know',
    weight: 63,
    when: (r) => fires(sailing(r) && has(r, services, 'paint', 'protect')),
    source: PRACTICE,
  },
  {
    id: 'size-days',
    severity: 'know',
    weight: 30,
    when: (r) =>
      fires((is(r, size, 'large') && polishing(r)) || (sailing(r) && is(r, wish, 'show'))),
    source: PRACTICE,
  },
  {
    id: 'outside-trade',
    severity: 'decide',
    weight: 47,
    decision: true,
    when: (r) =>
      fires(
        is(r, wheels, 'cracked', 'powder') ||
          has(r, leather, 'cracked') ||
          has(r, defects, 'rust', 'burn-through'),
      ),
    source: PRACTICE,
  },
  {
    id: 'hearsay',
    severity: 'know',
    weight: 42,
    when: (r, c) =>
      fires(
        is(r, oneOwner, 'few', 'many') &&
          (is(r, paintHistory, 'original') || is(r, polishedBefore, 'never')) &&
          atLeast(r, c, 8),
      ),
    source: PRACTICE,
  },
  {
    id: 'old-parts',
    severity: 'decide',
    weight: 48,
    decision: true,
    when: (r, c) => fires(has(r, trim, 'brittle-clips') || atLeast(r, c, 30)),
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
      return fires(r.value(claim) === true || (seen !== undefined && seen.length >= 4))
    },
    source: PRACTICE,
  },
  {
    id: 'lease',
    severity: 'decide',
    weight: 66,
    decision: true,
    when: (r) => fires(is(r, authority, 'lease-finance')),
    source: PRACTICE,
  },
  {
    id: 'not-yours',
    severity: 'decide',
    weight: 67,
    decision: true,
    when: (r) => fires(is(r, authority, 'not-mine', 'family-or-company')),
    source: PRACTICE,
  },
  {
    id: 'payer',
    severity: 'decide',
    weight: 64,
    decision: true,
    when: (r) => fires(is(r, payer, 'insurer', 'other')),
    source: PRACTICE,
  },
  {
    id: 'no-drive',
    severity: 'know',
    weight: 25,
    when: (r) => fires(r.value(driveConsent) === false),
    source: PRACTICE,
  },
]
