import type { FC } from 'hono/jsx'
import { isRefused, refusedForm } from '../parts/refused'
import { panelsOfSheet, type SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { PictureForm } from './picture-form'

/** Damage that was there when the car came, by panel and with a picture. */
export const ArrivalDamage: FC<SheetPart> = ({ words, view, once, ...given }) => {
  const refused = refusedForm(given, { kind: 'found', arrival: '1' })
  const of = { kind: 'damage', refused }
  return (
    <details class="screen-only" open={isRefused(refused)}>
      <summary>{words.say('page.damage.new')}</summary>
      <PictureForm
        words={words}
        id={view.id}
        kind="found"
        once={`${once}-damage`}
        hidden={{ arrival: '1' }}
        fileId="f-damage-file"
        refused={refused}
      >
        <LineSelect
          {...of}
          words={words}
          name="panel"
          label={words.say('page.panel')}
          values={panelsOfSheet(view)}
          of="panel."
          none={words.say('page.panel.none')}
        />
        <LineField {...of} name="place" label={words.say('page.damage.place')} maxlength={80} />
        <LineField
          {...of}
          name="text"
          label={words.say('page.damage.text')}
          rows={2}
          maxlength={2000}
        />
      </PictureForm>
    </details>
  )
}
