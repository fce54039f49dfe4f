import type { FC } from 'hono/jsx'
import { KIT } from '../../quote/context'
import type { StudioProfile } from '../../quote/studio-profile'
import type { Words } from '../../words/render'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary, errorFor, FieldFault, fieldId } from '../parts/error-summary'
import { Field, Select } from '../parts/field'
import { Tick } from '../parts/tick'
import { paths } from '../paths'
import {
  absencesText,
  SETTING_FIELDS,
  type SettingField,
  settingText,
  weekText,
} from './setting-fields'
import { SettingsPreview, type SettingsPreviewRow } from './settings-preview'

export type SettingsPageProps = {
  readonly frame: Frame
  readonly profile: StudioProfile
  /** Decimal places of the currency. */
  readonly exponent: number
  readonly rev: number
  readonly once: string
  readonly preview?: readonly SettingsPreviewRow[]
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

const One: FC<SettingsPageProps & { readonly field: SettingField }> = (p) => {
  const { frame, field, profile, exponent, errors, kept } = p
  const { words } = frame
  const label = words.say(`page.setting.${field.name}`)
  const hintKey = `page.setting.${field.name}.hint`
  const value = keptOne(kept, field.name, settingText(profile, field, exponent))
  if (field.kind === 'choice')
    return (
      <Select
        name={field.name}
        label={label}
        value={value}
        options={field.values.map((v) => ({
          value: v,
          label: words.say(`page.setting.${field.name}.${v}`),
        }))}
      />
    )
  return (
    <Field
      name={field.name}
      label={label}
      value={value}
      short={field.kind !== 'text' && field.kind !== 'long'}
      {...(words.has(hintKey) ? { hint: words.say(hintKey) } : {})}
      {...(field.kind === 'long' ? { rows: 5 } : {})}
      {...(field.kind === 'money' || field.kind === 'share' || field.kind === 'number'
        ? { inputmode: 'decimal' as const }
        : {})}
      {...(errors ? { errors } : {})}
    />
  )
}

const Week: FC<SettingsPageProps> = ({ frame: { words }, profile, errors, kept }) => (
  <fieldset>
    <legend>{words.say('page.setting.week')}</legend>
    <p class="hint">{words.say('page.setting.week.hint')}</p>
    <FieldFault name="week" message={errorFor(errors, 'week')} />
    {profile.week.map((spans, day) => (
      <Field
        name={`week-${day}`}
        label={words.say(`page.weekday.${day}`)}
        value={keptOne(kept, `week-${day}`, weekText(spans))}
        {...(errors ? { errors } : {})}
      />
    ))}
    <Field
      name="daysOff"
      label={words.say('page.setting.daysOff')}
      hint={words.say('page.setting.daysOff.hint')}
      rows={3}
      value={keptOne(kept, 'daysOff', profile.daysOff.join('\n'))}
      {...(errors ? { errors } : {})}
    />
    <Field
      name="absences"
      label={words.say('page.setting.absences')}
      hint={words.say('page.setting.absences.hint')}
      rows={3}
      value={keptOne(kept, 'absences', absencesText(profile))}
      {...(errors ? { errors } : {})}
    />
  </fieldset>
)

const Kit: FC<{ readonly words: Words; readonly profile: StudioProfile; readonly kept?: Kept }> = ({
  words,
  profile,
  kept,
}) => (
  <fieldset>
    <legend>{words.say('page.setting.kit')}</legend>
    <p class="hint">{words.say('page.setting.kit.hint')}</p>
    <div class="columns">
      {KIT.map((piece, i) => (
        <Tick
          type="checkbox"
          name="kit[]"
          value={piece}
          label={words.say(`page.kit.${piece}`)}
          checked={kept ? (kept['kit[]'] ?? []).includes(piece) : profile.kit.includes(piece)}
          {...(i === 0 ? { id: fieldId('kit') } : {})}
        />
      ))}
    </div>
  </fieldset>
)

/** The studio's own figures; every save is a new revision and old quotes keep theirs. */
export const SettingsPage: FC<SettingsPageProps> = (p) => {
  const { frame, errors, rev, once, profile, kept } = p
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.settings')}>
      <ErrorSummary words={words} errors={errors} />
      {p.preview ? <SettingsPreview words={words} rows={p.preview} /> : null}
      <form method="post" action={paths.settings} novalidate>
        <Once once={once} />
        <input type="hidden" name="rev" value={String(rev)} />
        <section>
          <h1>{words.say('page.settings')}</h1>
          <p class="quietly">{words.say('page.settings.lead', { rev })}</p>
          <p>
            <a href={paths.settingsWork}>{words.say('page.craft')}</a>
          </p>
        </section>
        {SETTING_FIELDS.map(({ section, fields }) => (
          <section>
            <fieldset>
              <legend>{words.say(`page.settings.${section}`)}</legend>
              {fields.map((field) => (
                <One {...p} field={field} />
              ))}
            </fieldset>
          </section>
        ))}
        <section>
          <Week {...p} />
        </section>
        <section>
          <Kit words={words} profile={profile} {...(kept ? { kept } : {})} />
          <div class="acts">
            <Button>{words.say('page.settings.save')}</Button>
            <Button name="act" value="preview" quiet>
              {words.say('page.preview.button')}
            </Button>
          </div>
        </section>
      </form>
    </Layout>
  )
}
