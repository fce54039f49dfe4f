import { paths } from '../../pages/paths'
import { SettingsPage } from '../../pages/studio/settings-page'
import type { SettingsPreviewRow } from '../../pages/studio/settings-preview'
import { studioProfile } from '../../quote/studio-profile'
import { selectLatestEstimates } from '../../store/estimates'
import { insertSettings } from '../../store/settings'
import { profileFaults } from '../acts/profile-faults'
import { previewSettings } from '../acts/settings-preview'
import { invalid, Problem } from '../http/problem'
import { faultsOf } from '../http/read-input'
import { type Route, route } from '../route'
import {
  type Any,
  fieldErrors,
  formOf,
  frameOf,
  keptOf,
  onceOf,
  orAgain,
  page,
  seeOther,
} from './page'
import { profileOfForm } from './profile-form'
import { PREVIEWED } from './settings-work'

export const settingsRoutes: readonly Route[] = [
  route({
    id: 'page.settings',
    face: 'page',
    method: 'GET',
    path: '/studio/settings',
    rights: 'owner',
    summary: 'The studio’s own figures.',
    answers: { 200: 'other' },
    act: (call) => settingsPage(call),
  }),
  route({
    id: 'page.settings.save',
    face: 'page',
    method: 'POST',
    path: '/studio/settings',
    rights: 'owner',
    summary: 'Save the settings as a new revision.',
    body: 'form',
    answers: { 200: 'other', 303: null },
    load: () => ({ latest: selectLatestEstimates(PREVIEWED) }),
    act: (call) => {
      const form = formOf(call)
      return orAgain(
        () => {
          const read = profileOfForm(form, call.studio.profile)
          if (read.faults.length > 0) throw invalid(read.faults)
          const parsed = studioProfile.safeParse(read.profile, { reportInput: true })
          if (!parsed.success) throw invalid(faultsOf(parsed.error))
          const unusable = profileFaults(parsed.data)
          if (unusable.length > 0) throw invalid(unusable)
          if (form.get('act') === 'preview') {
            const preview = previewSettings(call.loaded.latest, call.studio, parsed.data)
            return settingsPage(call, undefined, preview)
          }
          if (form.get('rev') !== String(call.studio.rev)) throw new Problem('stale')
          const rev = call.studio.rev + 1
          return seeOther(paths.settings, {
            writes: [insertSettings({ rev, body: parsed.data, by: call.who.kind, at: call.now })],
          })
        },
        (problem) => settingsPage(call, problem),
      )
    },
  }),
]

const settingsPage = (call: Any, problem?: Problem, preview?: readonly SettingsPreviewRow[]) =>
  page(
    <SettingsPage
      frame={frameOf(call)}
      profile={call.studio.profile}
      exponent={call.studio.engine.exponent}
      rev={call.studio.rev}
      once={onceOf(call)}
      {...(problem || preview ? { kept: keptOf(formOf(call)) } : {})}
      {...(preview ? { preview } : {})}
      {...(problem ? { errors: fieldErrors(call, problem) } : {})}
    />,
    problem ? 422 : 200,
  )
