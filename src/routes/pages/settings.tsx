import { paths } from '../../pages/paths'
import { SettingsPage } from '../../pages/studio/settings-page'
import type { SettingsPreviewRow } from '../../pages/studio/settings-preview'
import { selectLatestEstimates } from '../../store/estimates'
import { previewSettings } from '../acts/settings-preview'
import type { Problem } from '../http/problem'
import { type Route, route } from '../route'
import { type Any, fieldErrors, formOf, frameOf, keptOf, onceOf, orAgain, page } from './page'
import { profileOfForm } from './profile-form'
import { checkRev, PREVIEWED, saved, usable } from './settings-save'

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
          const body = usable(profileOfForm(form, call.studio.profile))
          if (form.get('act') === 'preview')
            return settingsPage(
              call,
              undefined,
              previewSettings(call.loaded.latest, call.studio, body),
            )
          checkRev(call)
          return saved(call, body, paths.settings)
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
