import { firstSaid, orUnknown, said, type Told } from './case'

const PLACES = [
  [/bumper|front cap|whole front/, 'front-bumper'],
  [/partial (hood|bonnet)/, 'bonnet-edge'],
  [/(?<!partial )(hood|bonnet)|front cap|front panels|whole front/, 'bonnet'],
  [/fender|wing|front panels|whole front/, 'wings'],
  [/door/, 'doors'],
  [/sill/, 'sills'],
  [/roof/, 'roof'],
  [/rear/, 'rear'],
  [/whole (car|body)|full (wrap|body)/, 'whole-car'],
  [/glass|window/, 'glass'],
] as const

const STATES = [
  [/flak|crack|craz|dried out|brittle/, 'cracked'],
  [/old|dull|yellow|stuck|baked/, 'dull'],
  [/torn|began|started|half off/, 'started'],
  [/pliable|normal|fresh/, 'pliable'],
] as const

/** What is told of film, wrap and stickers. */
export const mapFilm = (t: Told): Record<string, unknown> => {
  const state = String(t.film?.condition ?? '').toLowerCase()
  const area = String(t.film?.area ?? '')
    .toLowerCase()
    .replace(/\([^)]*not [^)]*\)/g, '')
  const years = t.film?.age_years
  return {
    'film-kind': /\bwrap/.test(t.all) ? ['wrap'] : ['clear-film'],
    'film-where': orUnknown(said(t.film === null ? t.bare : area, PLACES)),
    'film-age': typeof years === 'number' ? years : undefined,
    'film-state': orUnknown(said(state, STATES)),
    'film-over': firstSaid(t.bare, [
      [/bumper .{0,60}(touch|repair|straighten)/, 'bumper'],
      [/touch(ed)?[- ]up|repaint|repair/, 'repaint'],
      [/original/, 'factory'],
    ] as const),
  }
}

export const stickers = (t: Told): boolean => /sticker|decal|lettering/.test(t.bare)
