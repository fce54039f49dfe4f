import type { Child, FC } from 'hono/jsx'
import type { StudioProfile } from '../../quote/studio-profile'
import type { Words } from '../../words/render'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary } from '../parts/error-summary'
import { Field } from '../parts/field'
import { fromMinor } from '../parts/money-text'
import { Tick } from '../parts/tick'
import { paths } from '../paths'
import { type OwnPaceProps, OwnPaceView } from './own-pace'
import { SettingsPreview, type SettingsPreviewRow } from './settings-preview'

export type WorkSettingsProps = {
  readonly frame: Frame
  readonly profile: StudioProfile
  /** Every step of the catalogue, in working order. */
  readonly steps: readonly string[]
  /** Thresholds with their default and the limits nobody passes, µm. */
  readonly limits: readonly {
    readonly key: string
    readonly value: number
    readonly hardMin: number
    readonly hardMax: number
  }[]
  /** Sentences that may be worded anew, with what is said by default. */
  readonly sentences: readonly { readonly key: string; readonly text: string }[]
  readonly exponent: number
  readonly rev: number
  readonly once: string
  readonly preview?: readonly SettingsPreviewRow[]
  /** What finished jobs say; absent where they were not looked at. */
  readonly pace?: Pick<OwnPaceProps, 'proposals' | 'calibration'>
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

/** Folded away until wanted; open where a field in it was refused. */
const Fold: FC<{
  readonly title: string
  readonly hint: string
  readonly of: readonly string[]
  readonly errors: readonly FieldError[] | undefined
  readonly children?: Child
}> = ({ title, hint, of, errors, children }) => (
  <section>
    <details open={(errors ?? []).some((e) => of.some((p) => e.field.startsWith(p)))}>
      <summary>{title}</summary>
      <p class="hint">{hint}</p>
      {children}
    </details>
  </section>
)

const Steps: FC<WorkSettingsProps> = ({ frame: { words }, steps, profile, kept, errors }) => (
  <Fold
    title={words.say('page.craft.steps')}
    hint={words.say('page.craft.steps.hint')}
    of={['pace:', 'off:']}
    errors={errors}
  >
    {steps.map((id) => {
      const own = profile.steps[id]
      const pace = own?.pace === undefined ? '' : String(Math.round(own.pace * 1000) / 10)
      return (
        <div class="pair">
          <Field
            name={`pace:${id}`}
            label={words.say('page.craft.pace', { step: words.say(`step.${id}`) })}
            value={keptOne(kept, `pace:${id}`, pace)}
            inputmode="decimal"
            short
            {...(errors ? { errors } : {})}
          />
          <Tick
            type="checkbox"
            name={`off:${id}`}
            value="1"
            label={words.say('page.craft.off')}
            checked={kept ? keptOne(kept, `off:${id}`) === '1' : own?.off === true}
          />
        </div>
      )
    })}
  </Fold>
)

const Limits: FC<WorkSettingsProps> = ({ frame: { words }, limits, profile, kept, errors }) => (
  <Fold
    title={words.say('page.craft.limits')}
    hint={words.say('page.craft.limits.hint')}
    of={['limit:']}
    errors={errors}
  >
    {limits.map((l) => {
      const own = profile.limits?.[l.key]
      return (
        <Field
          name={`limit:${l.key}`}
          label={words.say(`page.limit.${l.key}`)}
          hint={words.say('page.craft.limit.hint', {
            value: l.value,
            min: l.hardMin,
            max: l.hardMax,
          })}
          value={keptOne(kept, `limit:${l.key}`, own === undefined ? '' : String(own))}
          inputmode="decimal"
          short
          {...(errors ? { errors } : {})}
        />
      )
    })}
  </Fold>
)

const Wording: FC<WorkSettingsProps> = ({ frame: { words }, sentences, profile, kept, errors }) => (
  <Fold
    title={words.say('page.craft.wording')}
    hint={words.say('page.craft.wording.hint')}
    of={['word:']}
    errors={errors}
  >
    {sentences.map((s) => (
      <Field
        name={`word:${s.key}`}
        label={s.text}
        rows={2}
        value={keptOne(kept, `word:${s.key}`, profile.wording?.[s.key] ?? '')}
        maxlength={2000}
        {...(errors ? { errors } : {})}
      />
    ))}
  </Fold>
)

export const ownStepText = (
  s: NonNullable<StudioProfile['ownSteps']>[number],
  exponent: number,
): string =>
  [
    s.name,
    String(s.minutes),
    ...(s.amount === undefined ? [] : [fromMinor(s.amount, exponent)]),
  ].join('; ')

const Lists: FC<WorkSettingsProps> = ({ frame: { words }, profile, exponent, kept, errors }) => {
  const list = (name: string, value: readonly string[]) => (
    <Field
      name={name}
      label={words.say(`page.craft.${name}`)}
      hint={words.say(`page.craft.${name}.hint`)}
      rows={4}
      value={keptOne(kept, name, value.join('\n'))}
      {...(errors ? { errors } : {})}
    />
  )
  return (
    <section>
      {list(
        'ownSteps',
        (profile.ownSteps ?? []).map((s) => ownStepText(s, exponent)),
      )}
      {list(
        'ownQuestions',
        (profile.ownQuestions ?? []).map((q) => q.prompt),
      )}
      {list(
        'team',
        (profile.team ?? []).map((t) => `${t.name}; ${t.rights}`),
      )}
    </section>
  )
}

const Logo: FC<{
  readonly words: Words
  readonly profile: StudioProfile
  readonly once: string
}> = ({ words, profile, once }) => (
  <section>
    <h2>{words.say('page.craft.logo')}</h2>
    {profile.logo ? <img src={profile.logo} alt={profile.name} height="48" /> : null}
    <form method="post" action={`${paths.settingsWork}/logo`} enctype="multipart/form-data">
      <Once once={`${once}-logo`} />
      <div class="field">
        <label for="f-file">{words.say('page.craft.logo.file')}</label>
        <p class="hint" id="f-file-hint">
          {words.say('page.craft.logo.hint')}
        </p>
        <input
          id="f-file"
          type="file"
          name="file"
          accept="image/jpeg,image/png,image/webp"
          aria-describedby="f-file-hint"
        />
      </div>
      <div class="acts">
        <Button quiet>{words.say('page.craft.logo.button')}</Button>
        {profile.logo ? (
          <Button name="remove" value="1" quiet>
            {words.say('page.craft.logo.remove')}
          </Button>
        ) : null}
      </div>
    </form>
  </section>
)

/** How the studio works and what it says: steps, thresholds, sentences, questions, people, picture. */
export const WorkSettingsPage: FC<WorkSettingsProps> = (p) => {
  const { frame, errors, rev, once, profile } = p
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.craft')}>
      <ErrorSummary words={words} errors={errors} />
      <section>
        <h1>{words.say('page.craft')}</h1>
        <p class="quietly">{words.say('page.settings.lead', { rev })}</p>
        <p>
          <a href={paths.settings}>{words.say('page.settings')}</a>
        </p>
      </section>
      {p.preview ? <SettingsPreview words={words} rows={p.preview} /> : null}
      {p.pace ? <OwnPaceView words={words} {...p.pace} rev={rev} once={once} /> : null}
      <form method="post" action={paths.settingsWork} novalidate>
        <Once once={once} />
        <input type="hidden" name="rev" value={String(rev)} />
        <Steps {...p} />
        <Limits {...p} />
        <Wording {...p} />
        <Lists {...p} />
        <section>
          <div class="acts">
            <Button>{words.say('page.settings.save')}</Button>
            <Button name="act" value="preview" quiet>
              {words.say('page.preview.button')}
            </Button>
          </div>
        </section>
      </form>
      <Logo words={words} profile={profile} once={once} />
    </Layout>
  )
}
