import { comesOff, filmByHour, filmClass, filmPlaces, hasBodyFilm } from '../../intake/facts/film'
import { has } from '../../intake/facts/has'
import { is } from '../../intake/facts/is'
import { hasLettering, hasStickers } from '../../intake/facts/lettering'
import { sizeFactor } from '../../intake/facts/size-factor'
import { wants } from '../../intake/facts/wants'
import { dangers } from '../../intake/questions/dangers'
import { filmOver } from '../../intake/questions/film-over'
import { filmWhere } from '../../intake/questions/film-where'
import { tint } from '../../intake/questions/tint'
import type { Reader } from '../../intake/reader'
import type { Need, StepRule } from '../rules'
import { filmMinutes, filmMinutesSource, filmPanels } from './minutes'
import { byTimeWhen, need, plus, sourceOf, times } from './need'
import { step } from './step'

const bodyPlaces = (places: readonly string[]): readonly string[] => {
  const body = places.filter((p) => p in filmMinutes)
  return body.includes('whole-car') ? ['whole-car'] : body
}

const pulled = (r: Reader, is: (place: string) => boolean): Need | null => {
  if (!hasBodyFilm(r)) return null
  const places = bodyPlaces(filmPlaces(r)).filter(is)
  if (places.length === 0) return null
  const c = filmClass(r)
  const parts = places.map((p) => {
    const [optimistic, mode, pessimistic] = filmMinutes[p]?.[c] ?? [0, 0, 0]
    return { optimistic, mode, pessimistic }
  })
  const amount = places.reduce((s, p) => s + (filmPanels[p] ?? 0), 0)
  return {
    quantity: { amount, unit: 'panel' },
    minutes: times(plus(...parts), sizeFactor(r)),
    rows: places.map((p) => ({
      row: `film-top.${p}.${c}`,
      per: filmMinutes[p]?.[c] ?? [0, 0, 0],
      times: sizeFactor(r),
      source: filmMinutesSource,
    })),
    places,
  }
}

/** A bumper was often repaired and is plastic: its film is a line of its own, and comes off last. */
const BUMPER = 'front-bumper'
const top: StepRule['need'] = (r) => pulled(r, (place) => place !== BUMPER)
const bumper: StepRule['need'] = (r) => pulled(r, (place) => place === BUMPER)

const glue: StepRule['need'] = (r) => {
  if (!hasBodyFilm(r)) return null
  const amount = bodyPlaces(filmPlaces(r)).reduce((s, p) => s + (filmPanels[p] ?? 0), 0)
  const c = filmClass(r)
  // Young film takes most of its glue along; brittle film leaves nearly all of it.
  const left = c === 'young' ? 0.4 : 1
  return need(c === 'brittle' ? 'adhesive-bad' : 'adhesive', amount, 'panel', left)
}

const letters: StepRule['need'] = (r) =>
  hasLettering(r) ? need('lettering', 2, 'piece', sizeFactor(r)) : null

const films = ['adhesive-solvent', 'film-heat'] as const

/** One corner first, then the owner's yes: film by the hour, and film over what may let go. */
const testCorner = (r: Reader): boolean => {
  if (!hasBodyFilm(r)) return false
  return filmByHour(r) || is(r, filmOver, 'repaint', 'bumper')
}

export const film: readonly StepRule[] = [
  step({
    id: 'film-test-corner',
    track: 'body',
    order: 230,
    after: ['wash'],
    hold: 'yes',
    source: sourceOf('film-test-corner'),
    cautions: () => ['film-stop'],
    lag: (r) =>
      testCorner(r) ? { minutes: 30, kind: 'working', blocks: 'bay', why: 'answer' } : null,
    need: (r) => (testCorner(r) ? need('film-test-corner', 1, 'piece') : null),
  }),
  step({
    id: 'film-top',
    materials: ['plastic-blades'],
    track: 'body',
    order: 234,
    after: ['wash', 'film-test-corner'],
    crewMax: 2,
    source: filmMinutesSource,
    cautions: () => [...films, 'film-stop'],
    need: top,
    byTime: byTimeWhen(filmByHour, top),
  }),
  step({
    id: 'film-bumper',
    materials: ['plastic-blades'],
    track: 'body',
    order: 236,
    after: ['wash', 'film-test-corner', 'film-top'],
    source: filmMinutesSource,
    cautions: () => [...films, 'film-consent', 'film-stop'],
    need: bumper,
    byTime: byTimeWhen(filmByHour, bumper),
  }),
  step({
    id: 'lettering',
    track: 'body',
    order: 238,
    after: ['wash'],
    crewMax: 2,
    source: sourceOf('lettering'),
    cautions: () => films,
    need: letters,
    byTime: byTimeWhen(() => true, letters),
  }),
  step({
    id: 'adhesive',
    materials: ['adhesive-remover'],
    track: 'body',
    order: 244,
    after: ['film-top', 'film-bumper'],
    pausable: false,
    crewMax: 2,
    source: sourceOf('adhesive'),
    cautions: () => ['adhesive-solvent', 'oily-rags'],
    need: glue,
    byTime: byTimeWhen(filmByHour, glue),
  }),
  step({
    id: 'stickers',
    track: 'body',
    order: 248,
    after: ['wash'],
    source: sourceOf('stickers'),
    cautions: () => ['adhesive-solvent'],
    need: (r) => (hasStickers(r) ? need('stickers', 3, 'piece') : null),
  }),
  step({
    id: 'film-glass',
    track: 'body',
    order: 250,
    after: ['wash'],
    source: sourceOf('film-glass'),
    cautions: () => ['heated-glass', 'adhesive-solvent'],
    need: (r) =>
      (comesOff(r) || (has(r, dangers, 'film') && wants(r, 'glass'))) && has(r, filmWhere, 'glass')
        ? need('film-glass', 1, 'piece')
        : null,
    byTime: (r) => (has(r, tint, 'heated-glass') ? { capMinutes: 300 } : null),
  }),
]
