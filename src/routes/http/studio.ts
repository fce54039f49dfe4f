import { currencyExponent } from '../../kernel/currency'
import { DEFAULT_PROFILE, engineSettings, type StudioProfile } from '../../quote/studio-profile'
import type { SettingsRevision } from '../../store/settings'
import { german } from '../../words/de'
import { english } from '../../words/en'
import { type Catalogue, type Words, words } from '../../words/render'
import type { Studio } from '../route'
import { zoneOf } from '../zone'

const YEAR = 365 * 86_400_000

/** The studio as of a settings revision; revision 0 is what a new studio starts with. */
export const studioOf = (
  row: SettingsRevision | undefined,
  now: number,
  catalogues: readonly Catalogue[] = [english],
): Studio => {
  const profile = (row?.body as StudioProfile | undefined) ?? DEFAULT_PROFILE
  const rev = row?.rev ?? 0
  const zone = zoneOf(profile.timeZone, now - YEAR, now + 2 * YEAR)
  const engine = engineSettings(profile, rev, zone)
  return {
    rev,
    profile,
    engine,
    words: wordsIn(profile, catalogues, engine),
  }
}

/** Catalogues before those of the app: the studio's own sentences, then its language. */
const own = ({ wording, language }: StudioProfile): readonly Catalogue[] => [
  ...(wording ? [wording] : []),
  ...(language === 'de' ? [german] : []),
]

const wordsIn = (
  profile: StudioProfile,
  catalogues: readonly Catalogue[],
  money: { readonly currency: string; readonly exponent: number },
): Words =>
  words([...own(profile), ...catalogues], {
    // Most of a page is English still, and a screen reader reads it in the language named.
    language: 'en',
    locale: profile.locale,
    currency: money.currency,
    exponent: money.exponent,
  })

/** The studio as an offer of its own currency is read: an old quote stays in the money it was made in. */
export const studioInMoney = (
  studio: Studio,
  currency: string,
  catalogues: readonly Catalogue[] = [english],
): Studio => {
  const exponent = currencyExponent(currency)
  if (currency === studio.engine.currency || !exponent.ok) return studio
  return {
    ...studio,
    words: wordsIn(studio.profile, catalogues, { currency, exponent: exponent.value }),
  }
}
