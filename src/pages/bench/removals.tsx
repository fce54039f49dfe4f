import type { FC } from 'hono/jsx'
import { GOES_BEFORE } from '../../docket/kind-names'
import { REMOVED_SORTS } from '../../jobsheet/refit'
import { Button } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import { paths } from '../paths'
import type { SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { LineForm } from './line-form'
import { PictureForm } from './picture-form'

/** Parts taken off, written down at that moment: where from, how thick, where they lie. */
export const Removals: FC<SheetPart> = ({ words, view, once, ...given }) => {
  const refused = refusedForm(given, { kind: 'removed' })
  const of = { kind: 'removed', refused }
  return (
    <section id="removals">
      <h2>{words.say('page.removals')}</h2>
      <ul class="plain">
        {view.removals.map((r) => (
          <li>
            <span class="box paper-inline" aria-hidden="true" />
            <b>{r.item}</b> {[r.place, r.thickness, r.stored].filter(Boolean).join(', ')}
            {r.before ? <p>{words.say(`page.goes-before.${r.before}.said`)}</p> : null}
            {r.photo ? (
              <p>
                <a href={paths.docketPhoto(view.id, r.photo)}>{words.say('page.finding.photo')}</a>
              </p>
            ) : null}
            {r.refitted ? (
              <p class="quietly">{words.say('page.removal.back')}</p>
            ) : (
              <LineForm
                id={view.id}
                kind="refitted"
                once={`${once}-refit-${r.id}`}
                hidden={{ removal: r.id }}
              >
                <div class="acts">
                  <Button quiet>
                    {words.say('page.removal.refit')}
                    <span class="unseen"> {r.item}</span>
                  </Button>
                </div>
              </LineForm>
            )}
          </li>
        ))}
      </ul>
      <details class="screen-only" open={isRefused(refused)}>
        <summary>{words.say('page.removal.new')}</summary>
        <PictureForm
          words={words}
          id={view.id}
          kind="removed"
          once={`${once}-removed`}
          fileId="f-removed-file"
          refused={refused}
        >
          <LineField {...of} name="item" label={words.say('page.removal.item')} maxlength={80} />
          <LineField {...of} name="place" label={words.say('page.removal.place')} maxlength={80} />
          <LineField
            {...of}
            name="thickness"
            label={words.say('page.removal.thickness')}
            maxlength={40}
          />
          <LineField
            {...of}
            name="stored"
            label={words.say('page.removal.stored')}
            maxlength={80}
          />
          <LineSelect
            {...of}
            words={words}
            name="sort"
            label={words.say('page.removal.sort')}
            values={REMOVED_SORTS}
            of="page.removal.sort."
            otherwise="other"
          />
          <LineSelect
            {...of}
            words={words}
            name="before"
            label={words.say('page.goes-before')}
            values={GOES_BEFORE}
            of="page.goes-before."
            none={words.say('page.goes-before.none')}
          />
        </PictureForm>
      </details>
    </section>
  )
}
