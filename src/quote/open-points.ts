import type { Answers } from '../intake/answers'
import { leakOpen } from '../intake/facts/damp'
import { freshPaint } from '../intake/facts/fresh-paint'
import { wants } from '../intake/facts/wants'
import type { Question } from '../intake/question'
import { authority } from '../intake/questions/authority'
import { belongings } from '../intake/questions/belongings'
import { bringHow } from '../intake/questions/bring-how'
import { cabinMarks } from '../intake/questions/cabin-marks'
import { cabinState } from '../intake/questions/cabin-state'
import { changes } from '../intake/questions/changes'
import { clothTest } from '../intake/questions/cloth-test'
import { dampCheck } from '../intake/questions/damp-check'
import { dangers } from '../intake/questions/dangers'
import { defects } from '../intake/questions/defects'
import { driveState } from '../intake/questions/drive-state'
import { dryCheck } from '../intake/questions/dry-check'
import { earlierProtection } from '../intake/questions/earlier-protection'
import { engineKind } from '../intake/questions/engine-kind'
import { filmAge } from '../intake/questions/film-age'
import { filmOver } from '../intake/questions/film-over'
import { filmState } from '../intake/questions/film-state'
import { freshPaintWeeks } from '../intake/questions/fresh-paint-weeks'
import { growth } from '../intake/questions/growth'
import { headliner } from '../intake/questions/headliner'
import { insured } from '../intake/questions/insured'
import { jacking } from '../intake/questions/jacking'
import { keys } from '../intake/questions/keys'
import { leather } from '../intake/questions/leather'
import { lockingKey } from '../intake/questions/locking-key'
import { mouldArea } from '../intake/questions/mould-area'
import { oneOwner } from '../intake/questions/one-owner'
import { otherWork } from '../intake/questions/other-work'
import { ownerCheck } from '../intake/questions/owner-check'
import { ownerConsent } from '../intake/questions/owner-consent'
import { ownerSince } from '../intake/questions/owner-since'
import { paintCheck } from '../intake/questions/paint-check'
import { paintHistory } from '../intake/questions/paint-history'
import { panelMaterial } from '../intake/questions/panel-material'
import { partCheck } from '../intake/questions/part-check'
import { payer } from '../intake/questions/payer'
import { peelWhere } from '../intake/questions/peel-where'
import { polishedBefore } from '../intake/questions/polished-before'
import { protectionWhen } from '../intake/questions/protection-when'
import { resprayPanels } from '../intake/questions/respray-panels'
import { ride } from '../intake/questions/ride'
import { roofCheck } from '../intake/questions/roof-check'
import { roofKind } from '../intake/questions/roof-kind'
import { roofState } from '../intake/questions/roof-state'
import { sensitivePeople } from '../intake/questions/sensitive-people'
import { size } from '../intake/questions/size'
import { spacers } from '../intake/questions/spacers'
import { systemCheck } from '../intake/questions/system-check'
import { terms } from '../intake/questions/terms'
import { tint } from '../intake/questions/tint'
import { trim } from '../intake/questions/trim'
import { warningLights } from '../intake/questions/warning-lights'
import { wetDepth } from '../intake/questions/wet-depth'
import { wetElectrics } from '../intake/questions/wet-electrics'
import { wetSource } from '../intake/questions/wet-source'
import { wetWhere } from '../intake/questions/wet-where'
import { wheelMarks } from '../intake/questions/wheel-marks'
import { wheels } from '../intake/questions/wheels'
import { year } from '../intake/questions/year'
import { yearCheck } from '../intake/questions/year-check'
import type { Reader } from '../intake/reader'
import { session } from '../intake/session'
import type { Context } from './context'
import type { Estimate } from './estimate-types'
import { has, is } from './risks/read'
import type { OpenRule } from './rules'
import { gaugeReads } from './steps/readable'

const PRACTICE = 'common practice, no source'
const OWN = 'own estimate'

/** Checks one thing whenever any of these questions is asked and not settled. */
const unknown = (id: string, ...questions: readonly Question<unknown>[]): OpenRule => ({
  id,
  when: (r) => questions.some((q) => r.unsettled(q)),
  source: PRACTICE,
})

const rule = (id: string, when: OpenRule['when'], source = PRACTICE): OpenRule => ({
  id,
  when,
  source,
})

/** Not settled, and each one changes hours, safety or the result. */
const unsettled: readonly OpenRule[] = [
  unknown('dangers', dangers),
  rule(
    'year',
    (r) =>
      r.unsettled(year) ||
      is(r, ownerCheck, 'car-year-wrong') ||
      is(r, yearCheck, 'car-year-wrong'),
  ),
  unknown('size', size),
  unknown('paint-history', paintHistory, resprayPanels),
  unknown('fresh-paint-age', freshPaintWeeks),
  unknown('paint-system', clothTest),
  unknown('paint-defects', defects),
  unknown('paint-past', polishedBefore, earlierProtection),
  unknown('panel-material', panelMaterial),
  unknown('peel-places', peelWhere),
  unknown('film', filmAge, filmState),
  unknown('film-over', filmOver),
  unknown('wet-extent', wetDepth, wetWhere),
  unknown('wet-electrics', wetElectrics),
  unknown('growth', growth, mouldArea),
  unknown('sensitive-people', sensitivePeople),
  unknown('cabin', cabinState, cabinMarks),
  unknown('leather', leather),
  unknown('headliner', headliner),
  unknown('old-trim', trim),
  unknown('roof', roofKind, roofState),
  unknown('drives', driveState),
  unknown('warning-lights', warningLights),
  unknown('high-voltage', engineKind),
  unknown('jacking-points', jacking),
  unknown('wheel-finish', wheels),
  unknown('wheel-fit', spacers, ride),
  unknown('glass', tint),
  unknown('battery', keys),
  unknown('wheel-marks', wheelMarks),
  unknown('added-parts', changes),
  unknown('old-layer', protectionWhen),
  unknown('terms', terms),
  unknown('insured', insured),
]

const known = (r: Reader, q: Question<number>): number => r.value(q) ?? Number.NaN

/** Settled or not, these are checked because of what the answers say. */
const stated: readonly OpenRule[] = [
  rule('film-build', (r, c) => c.measured === undefined && wants(r, 'paint') && gaugeReads(r, c)),
  rule('probe-kind', (r) => is(r, panelMaterial, 'aluminium')),
  rule('leak-place', (r) => leakOpen(r)),
  rule('leak-shut', (r) => is(r, wetSource, 'repaired') && !leakOpen(r)),
  rule('painter-sheet', (r) => freshPaint(r)),
  rule('locking-key', (r) => r.unsettled(lockingKey) || is(r, lockingKey, 'missing')),
  rule(
    'consent',
    (r) =>
      is(r, authority, 'lease-finance', 'family-or-company', 'not-mine') &&
      r.value(ownerConsent) !== true,
  ),
  rule('consent-paper', (r) => r.value(ownerConsent) === true),
  rule('return-terms', (r) => has(r, terms, 'return-terms')),
  rule('paint-warranty', (r) => has(r, terms, 'paint-warranty')),
  rule('battery-code', (r) => has(r, keys, 'code-needed')),
  rule('one-key', (r) => has(r, keys, 'one-key')),
  rule('air-ride', (r) => has(r, changes, 'air-ride')),
  rule(
    'added-wiring',
    (r) => has(r, changes, 'added-wiring') || has(r, belongings, 'added-wiring'),
  ),
  rule('body-kit', (r) => has(r, changes, 'body-kit')),
  rule('kerbed', (r) => has(r, wheelMarks, 'kerbed')),
  rule('caliper-letters', (r) => has(r, wheelMarks, 'caliper-letters')),
  rule('repaint-first', (r) => has(r, otherWork, 'repaint')),
  rule('dents-first', (r) => has(r, otherWork, 'dents')),
  rule('glass-first', (r) => has(r, otherWork, 'glass')),
  rule('upholsterer', (r) => has(r, otherWork, 'upholstery')),
  rule('workshop-first', (r) => has(r, otherWork, 'workshop')),
  rule('transport', (r) => is(r, bringHow, 'need-transport')),
  rule('damp-below', (r) => is(r, dampCheck, 'was-damp')),
  rule('damp-place', (r) => is(r, dampCheck, 'damp-now')),
  rule('damp-hidden', (r) => is(r, dampCheck, 'never-damp') || r.unsettled(dampCheck), OWN),
  rule('roof-under', (r) => is(r, roofCheck, 'under-hard')),
  rule('who-pays', (r) => is(r, payer, 'insurer', 'other')),
]

/** Two answers that do not go together; the car decides. */
const contradictions: readonly OpenRule[] = [
  rule('film-older-than-car', (r) => r.asks(yearCheck) && !is(r, yearCheck, 'film-age-wrong'), OWN),
  rule('colour-on-modern-metallic', (r) => r.asks(systemCheck)),
  rule('said-original', (r) => r.asks(paintCheck) && !is(r, paintCheck, 'painted-again')),
  rule('owned-before-built', (r) => known(r, ownerSince) < known(r, year) - 1),
  rule(
    'first-owner-later',
    (r) =>
      is(r, oneOwner, 'one') &&
      known(r, ownerSince) > known(r, year) + 2 &&
      !is(r, ownerCheck, 'more-owners'),
  ),
  rule(
    'never-polished-but-filled',
    (r) => is(r, polishedBefore, 'never') && has(r, earlierProtection, 'scratch-remover'),
  ),
  rule('no-such-part', (r) => r.asks(partCheck) && !is(r, partCheck, 'service-wrong')),
  rule('repair-held', (r) => r.asks(dryCheck)),
]

/** What is checked when the car arrives, because it is not known or two answers disagree. */
export const openPoints: readonly OpenRule[] = [...unsettled, ...stated, ...contradictions]

/** The checks of one set of answers, each with the questions that were read for it. */
export const openPointsOf = (
  answers: Answers,
  c: Context,
  s = session(answers),
): Estimate['openPoints'] =>
  openPoints.flatMap(({ id, when, source }) => {
    const marks = s.begin()
    return when(s.reader, c) ? [{ id, because: s.names(marks), source }] : []
  })
