import type { FC } from 'hono/jsx'
import { AFTER_NO } from '../../jobsheet/polish-word'
import type { Words } from '../../words/render'
import { type Kept, keptOne } from '../frame'
import { Button, Once } from '../parts/button'
import { errorFor, FieldFault, fieldId } from '../parts/error-summary'
import { Field } from '../parts/field'
import { money } from '../parts/money-text'
import { isRefused, type Refused, refusedForm, typed } from '../parts/refused'
import { Tick } from '../parts/tick'
import { paths } from '../paths'

export type Share = { readonly low: number; readonly high: number } | null

export type ReIssueView = {
  readonly issue: string
  readonly revision: number
  readonly panels: readonly {
    readonly panel: string
    readonly promised: string
    readonly now: string
  }[]
  readonly promised: Share
  readonly now: Share
  /** What the work costs from now on, with tax, and what it cost; null: as agreed. */
  readonly price: { readonly total: number; readonly was: number } | null
  readonly text: string | null
  readonly decision: {
    readonly decision: 'go-on' | 'no'
    readonly instead?: string | undefined
  } | null
}

type ReIssueProps = Refused & {
  readonly words: Words
  readonly id: string
  readonly once: string
  readonly name: string
  readonly view: ReIssueView
}

const shareText = (words: Words, share: Share): string =>
  share
    ? words.say('page.re-issue.share', { low: share.low, high: Math.min(0.95, share.high) })
    : words.say('page.re-issue.share-none')

/** What shrank, panel by panel, with the share of marks and the price before and now. */
export const ReIssueFacts: FC<{ readonly words: Words; readonly view: ReIssueView }> = ({
  words,
  view,
}) => (
  <>
    {view.panels.length > 0 ? (
      <table class="stack">
        <caption>{words.say('page.re-issue.panels')}</caption>
        <thead>
          <tr>
            <th scope="col">{words.say('page.panel')}</th>
            <th scope="col">{words.say('page.re-issue.was')}</th>
            <th scope="col">{words.say('page.re-issue.now')}</th>
          </tr>
        </thead>
        <tbody>
          {view.panels.map((p) => (
            <tr>
              <th scope="row">{words.say(`panel.${p.panel}`)}</th>
              <td data-label={words.say('page.re-issue.was')}>
                {words.say(`level.${p.promised}`)}
              </td>
              <td data-label={words.say('page.re-issue.now')}>{words.say(`level.${p.now}`)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    ) : null}
    {view.text ? <p class="said-plainly">{view.text}</p> : null}
    {view.promised || view.now ? (
      <p>
        {words.say('page.re-issue.shares', {
          was: shareText(words, view.promised),
          now: shareText(words, view.now),
        })}
      </p>
    ) : null}
    <p>
      {view.price
        ? words.say('page.re-issue.price', {
            total: money(words, view.price.total),
            was: money(words, view.price.was),
          })
        : words.say('page.re-issue.price-same')}
    </p>
  </>
)

const Ask: FC<ReIssueProps> = (p) => {
  const { words, id, view, once } = p
  const ask = refusedForm(p, { decision: 'ask' })
  return (
    <details open={isRefused(ask)}>
      <summary>{words.say('page.decide.ask')}</summary>
      <form method="post" action={paths.decision(id)} novalidate>
        <Once once={`${once}-ask`} />
        <input type="hidden" name="revision" value={String(view.revision)} />
        <input type="hidden" name="decision" value="ask" />
        <Field
          name="text"
          id="f-ask"
          label={words.say('page.decide.ask.text')}
          rows={4}
          maxlength={2000}
          {...typed(ask, 'text')}
        />
        <div class="acts">
          <Button quiet>{words.say('page.decide.ask.send')}</Button>
        </div>
      </form>
    </details>
  )
}

/** What to do instead: none is chosen beforehand. */
export const Instead: FC<{ readonly words: Words } & Refused> = ({ words, errors, kept }) => (
  <fieldset>
    <legend>{words.say('page.re-issue.instead')}</legend>
    <FieldFault name="instead" message={errorFor(errors, 'instead')} />
    <div class="ticks">
      {AFTER_NO.map((value, i) => (
        <Tick
          type="radio"
          name="instead"
          value={value}
          label={words.say(`page.re-issue.${value}`)}
          hint={words.say(`page.re-issue.${value}.hint`)}
          checked={keptOne(kept as Kept | undefined, 'instead') === value}
          {...(i === 0 ? { id: fieldId('instead') } : {})}
        />
      ))}
    </div>
  </fieldset>
)

/** A smaller result asked before polishing: yes, a question, or no with what is done instead. */
export const ReIssueCard: FC<ReIssueProps> = (p) => {
  const { words, id, view, once } = p
  const yes = refusedForm(p, { decision: 'go-on' })
  const no = refusedForm(p, { decision: 'no' })
  if (view.decision)
    return (
      <div class="note know">
        <p>
          {words.say(
            view.decision.decision === 'go-on'
              ? 'page.re-issue.said-yes'
              : `page.re-issue.said-${view.decision.instead ?? 'stop'}`,
          )}
        </p>
        <details>
          <summary>{words.say('page.re-issue.what')}</summary>
          <ReIssueFacts words={words} view={view} />
        </details>
      </div>
    )
  return (
    <div class="note decide">
      <p class="severity">{words.say('page.severity.decide')}</p>
      <h2>{words.say('page.re-issue')}</h2>
      <p>{words.say('page.re-issue.lead')}</p>
      <ReIssueFacts words={words} view={view} />
      <p>
        <b>{words.say('page.re-issue.waits')}</b>
      </p>
      <form method="post" action={paths.reIssueDecision(id, view.issue)} novalidate>
        <Once once={`${once}-${view.issue}-yes`} />
        <input type="hidden" name="decision" value="go-on" />
        <Field
          name="name"
          id="f-name-yes"
          label={words.say('page.decide.name')}
          autocomplete="name"
          maxlength={200}
          {...typed(yes, 'name', p.name)}
        />
        <div class="acts">
          <Button>{words.say('page.re-issue.yes')}</Button>
        </div>
      </form>
      <Ask {...p} />
      <details open={isRefused(no)}>
        <summary>{words.say('page.re-issue.no')}</summary>
        <form method="post" action={paths.reIssueDecision(id, view.issue)} novalidate>
          <Once once={`${once}-${view.issue}-no`} />
          <input type="hidden" name="decision" value="no" />
          <Instead words={words} {...no} />
          <Field
            name="name"
            id="f-name-no"
            label={words.say('page.decide.name')}
            autocomplete="name"
            maxlength={200}
            {...typed(no, 'name', p.name)}
          />
          <div class="acts">
            <Button quiet>{words.say('page.re-issue.say-no')}</Button>
          </div>
        </form>
      </details>
    </div>
  )
}
