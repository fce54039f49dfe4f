import type { FC } from 'hono/jsx'
import { FINDING_KINDS } from '../../jobsheet/finding-kinds'
import { Button, Once } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import { paths } from '../paths'
import { type FindingView, panelsOfSheet, type SheetPart } from './bench-view'
import { Extras } from './extras'
import { FilmAnswer } from './film-answer'
import { FindingLine } from './finding-line'
import { LineField, LineSelect } from './line-field'
import { PictureForm } from './picture-form'

const KINDS = FINDING_KINDS.map((k) => k.id)

/** One tap from a finding to the question it usually leads to, with the minutes it usually adds. */
const AskFrom: FC<
  Pick<SheetPart, 'words' | 'view' | 'once'> & { readonly finding: FindingView }
> = ({ words, view, once, finding: f }) =>
  f.suggestion && f.suggestion.minutes > 0 && !view.extras.some((e) => e.finding === f.id) ? (
    <form class="screen-only" method="post" action={paths.benchExtra(view.id)} novalidate>
      <Once once={`${once}-ask-${f.id}`} />
      <input type="hidden" name="kind" value="extra-asked" />
      <input type="hidden" name="finding" value={f.id} />
      <input
        type="hidden"
        name="text"
        value={`${words.say(`finding.${f.suggestion.id}`)} (${f.place}): ${f.text}`.slice(0, 2000)}
      />
      <input type="hidden" name="minutes" value={String(f.suggestion.minutes)} />
      <div class="acts">
        <Button quiet>
          {words.say('page.finding.ask', { v: f.suggestion.minutes })}
          <span class="unseen"> {f.place}</span>
        </Button>
      </div>
    </form>
  ) : null

/** What was found, with a photo if there is one, what to do about it, and the question it may lead to. */
export const Findings: FC<SheetPart> = (p) => {
  const { words, view, once } = p
  const refused = refusedForm(p, { kind: 'found', arrival: '' })
  const of = { kind: 'found', refused }
  return (
    <section id="findings">
      <h2>{words.say('page.findings')}</h2>
      <ul class="plain">
        {view.findings
          .filter((f) => !f.arrival)
          .map((f) => (
            <FindingLine words={words} finding={f}>
              <AskFrom words={words} view={view} once={once} finding={f} />
            </FindingLine>
          ))}
      </ul>
      <FilmAnswer {...p} />
      <details class="screen-only" open={isRefused(refused)}>
        <summary>{words.say('page.finding.new')}</summary>
        <PictureForm
          words={words}
          id={view.id}
          kind="found"
          once={`${once}-found`}
          fileId="f-found-file"
          refused={refused}
        >
          <LineSelect
            {...of}
            words={words}
            name="suggests"
            label={words.say('page.finding.kind')}
            values={KINDS}
            of="finding."
            none={words.say('page.finding.kind.none')}
          />
          <LineSelect
            {...of}
            words={words}
            name="panel"
            label={words.say('page.panel')}
            values={panelsOfSheet(view)}
            of="panel."
            none={words.say('page.panel.none')}
          />
          <LineField {...of} name="place" label={words.say('page.finding.place')} maxlength={80} />
          <LineField
            {...of}
            name="text"
            label={words.say('page.finding.text')}
            rows={3}
            maxlength={2000}
          />
        </PictureForm>
      </details>
      <Extras {...p} />
    </section>
  )
}
