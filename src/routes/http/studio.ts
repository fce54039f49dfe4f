import { DEFAULT_PROFILE, engineSettings, type StudioProfile } from '../../quote/studio-profile'
import type { SettingsRevision } from '../../store/settings'
import { english } from '../../words/en'
import { type Catalogue, words } from '../../words/render'
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
    words: words(profile.wording ? [profile.wording, ...catalogues] : catalogues, {
      language: 'en',
      locale: profile.locale,
      currency: profile.currency,
      exponent: engine.exponent,
    }),
  }
}
