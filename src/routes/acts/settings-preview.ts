import type { SettingsPreviewRow } from '../../pages/studio/settings-preview'
import type { Adjustment } from '../../quote/adjustment'
import { type EstimateInput, estimate } from '../../quote/estimate'
import { engineSettings, type StudioProfile } from '../../quote/studio-profile'
import type { LatestEstimate } from '../../store/estimates'
import type { Studio } from '../route'

type Kept = Omit<EstimateInput, 'settings' | 'adjustments'> & {
  readonly adjustments: readonly Omit<Adjustment, 'why'>[]
}

/** The latest estimates as they come out now and as they would with other settings; nothing is kept. */
export const previewSettings = (
  latest: readonly LatestEstimate[],
  studio: Studio,
  profile: StudioProfile,
): readonly SettingsPreviewRow[] => {
  const then = engineSettings(profile, studio.rev, studio.engine.zone)
  return latest.map(({ inputs, reference, title, docket }) => {
    const kept = inputs as Kept
    const adjustments = kept.adjustments.map((a) => ({ ...a, why: '-' }) as Adjustment)
    const made = (settings: EstimateInput['settings']) =>
      estimate({ ...kept, adjustments, settings })
    const [before, after] = [made(studio.engine), made(then)]
    return {
      docket,
      reference,
      car: title,
      before: { total: before.offer.total, minutes: before.labourMinutes.likely },
      after: { total: after.offer.total, minutes: after.labourMinutes.likely },
    }
  })
}
