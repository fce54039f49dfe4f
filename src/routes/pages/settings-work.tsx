import { paths } from '../../pages/paths'
import type { SettingsPreviewRow } from '../../pages/studio/settings-preview'
import { WorkSettingsPage } from '../../pages/studio/settings-work-page'
import { type LimitKey, limits } from '../../quote/paint/constants'
import { steps as catalogue } from '../../quote/steps'
import { selectLatestEstimates } from '../../store/estimates'
import { selectFinishedLines, selectFinishedPlans } from '../../store/finished'
import { english } from '../../words/en'
import { MOST_FINISHED, type OwnPace, ownPace } from '../acts/own-pace'
import { cleanPicture } from '../acts/picture'
import { mayWord } from '../acts/profile-faults'
import { previewSettings } from '../acts/settings-preview'
import { invalid, type Problem } from '../http/problem'
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
  wholeOf,
} from './page'
import { checkRev, PREVIEWED, saved, usable } from './settings-save'
import { workField, workOfForm } from './work-form'

/** Bytes of a picture beside the name: it travels with every page. */
const LOGO_BYTES = 30_000

/** Thresholds a studio has a say in; the others belong to the model. */
const TOLD: readonly LimitKey[] = [
  'jobCap',
  'lifetimeCap',
  'floorClear',
  'floorColour',
  'decisionMost',
  'thinStop',
  'thinHand',
  'thinLight',
  'singleStageMachine',
  'edgeZoneMm',
  'blendZoneMm',
  'freshResprayDays',
]

const STEPS = [...catalogue].sort((a, b) => a.order - b.order).map((s) => s.id)
const SENTENCES = Object.keys(english)
  .filter(mayWord)
  .map((key) => ({ key, text: english[key] ?? '' }))

type Shown = {
  readonly problem?: Problem
  readonly preview?: readonly SettingsPreviewRow[]
  readonly pace?: OwnPace
}

const workPage = (call: Any, { problem, preview, pace }: Shown = {}) => {
  const typed = problem || preview ? keptOf(formOf(call)) : undefined
  return page(
    <WorkSettingsPage
      frame={frameOf(call)}
      profile={call.studio.profile}
      steps={STEPS}
      limits={TOLD.map((key) => ({ key, ...limits[key] }))}
      sentences={SENTENCES}
      exponent={call.studio.engine.exponent}
      rev={call.studio.rev}
      once={onceOf(call)}
      {...(typed ? { kept: typed } : {})}
      {...(preview ? { preview } : {})}
      {...(pace ? { pace } : {})}
      {...(problem ? { errors: fieldErrors(call, problem) } : {})}
    />,
    problem ? 422 : 200,
  )
}

export const workSettingsRoutes: readonly Route[] = [
  route({
    id: 'page.settings.work',
    face: 'page',
    method: 'GET',
    path: '/studio/settings/work',
    rights: 'owner',
    summary: 'Steps, thresholds, sentences, own questions, people and the picture.',
    answers: { 200: 'other' },
    load: () => ({
      lines: selectFinishedLines(MOST_FINISHED),
      plans: selectFinishedPlans(MOST_FINISHED),
    }),
    act: (call) => {
      const { lines, plans } = call.loaded
      return workPage(call, { pace: ownPace(lines, plans, call.studio.profile.steps) })
    },
  }),
  route({
    id: 'page.settings.work.save',
    face: 'page',
    method: 'POST',
    path: '/studio/settings/work',
    rights: 'owner',
    summary:
      'Save them as a new revision, or see what they would have made of the latest estimates.',
    body: 'form',
    answers: { 200: 'other', 303: null },
    load: () => ({ latest: selectLatestEstimates(PREVIEWED) }),
    act: (call) => {
      const form = formOf(call)
      return orAgain(
        () => {
          const body = usable(workOfForm(form, call.studio.profile), workField)
          if (form.get('act') === 'preview')
            return workPage(call, {
              preview: previewSettings(call.loaded.latest, call.studio, body),
            })
          checkRev(call)
          return saved(call, body, paths.settingsWork)
        },
        (problem) => workPage(call, { problem }),
      )
    },
  }),
  route({
    id: 'page.settings.pace',
    face: 'page',
    method: 'POST',
    path: '/studio/settings/work/pace',
    rights: 'owner',
    summary: 'Take over a pace that finished jobs propose.',
    body: 'form',
    answers: { 303: null },
    act: (call) => {
      const form = formOf(call)
      checkRev(call)
      const step = STEPS.find((id) => id === form.get('step'))
      const pace = wholeOf(form, 'pace')
      if (step === undefined) throw invalid([{ pointer: '/step', code: 'ERR_VALUE' }])
      if (pace === undefined || !(pace >= 25 && pace <= 400))
        throw invalid([{ pointer: '/pace', code: 'ERR_PACE' }])
      const { profile } = call.studio
      const steps = { ...profile.steps, [step]: { ...profile.steps[step], pace: pace / 100 } }
      return saved(call, { ...profile, steps }, paths.settingsWork)
    },
  }),
  route({
    id: 'page.settings.logo',
    face: 'page',
    method: 'POST',
    path: '/studio/settings/work/logo',
    rights: 'owner',
    summary: 'The picture beside the name.',
    body: 'multipart',
    answers: { 303: null },
    act: (call) => {
      const form = formOf(call)
      return orAgain(
        async () => {
          const { logo: _was, ...rest } = call.studio.profile
          if (form.get('remove') !== null) return saved(call, rest, paths.settingsWork)
          const file = form.file('file')
          if (!file) throw invalid([{ pointer: '/file', code: 'ERR_FILE_MISSING' }])
          const cleaned = cleanPicture(new Uint8Array(await file.arrayBuffer()))
          if (!cleaned.ok) throw invalid([{ pointer: '/file', code: cleaned.error }])
          const { bytes, mime } = cleaned.value
          if (bytes.byteLength > LOGO_BYTES)
            throw invalid([{ pointer: '/file', code: 'ERR_LOGO_TOO_LARGE' }])
          const base64 = btoa(Array.from(bytes, (b) => String.fromCharCode(b)).join(''))
          const logo = `data:${mime};base64,${base64}`
          return saved(call, { ...rest, logo }, paths.settingsWork)
        },
        (problem) => workPage(call, { problem }),
      )
    },
  }),
]
