import type { FC } from 'hono/jsx'
import { keptOne } from '../frame'
import { Button, Once } from '../parts/button'
import { Field } from '../parts/field'
import { isRefused, refusedForm, typed } from '../parts/refused'
import { Tick } from '../parts/tick'
import { paths } from '../paths'
import { Instead } from '../quote/re-issue'
import type { SheetPart } from './bench-view'

/** What was said on the phone, with who said it. */
const ByPhone: FC<SheetPart & { readonly issue: string }> = ({
  words,
  view,
  once,
  issue,
  ...p
}) => {
  const said = refusedForm(p, { kind: 're-issue-decided' })
  const chosen = keptOne(said.kept, 'decision')
  return (
    <details class="screen-only" open={isRefused(said)}>
      <summary>{words.say('page.re-issue.phone')}</summary>
      <form method="post" action={paths.benchReIssueDecision(view.id, issue)} novalidate>
        <Once once={`${once}-re-issue-phone`} />
        <input type="hidden" name="kind" value="re-issue-decided" />
        <fieldset>
          <legend>{words.say('page.re-issue.phone.said')}</legend>
          {(['go-on', 'no'] as const).map((value) => (
            <Tick
              type="radio"
              name="decision"
              value={value}
              label={words.say(`page.re-issue.phone.${value}`)}
              checked={chosen === value}
            />
          ))}
        </fieldset>
        <Instead words={words} {...said} />
        <Field
          name="name"
          id="f-re-issue-name"
          label={words.say('page.re-issue.phone.name')}
          maxlength={200}
          autocomplete="off"
          {...typed(said, 'name')}
        />
        <div class="acts">
          <Button quiet>{words.say('page.re-issue.phone.keep')}</Button>
        </div>
      </form>
    </details>
  )
}

/** Asking before polishing when measuring shrank the result, and the word on it. */
export const SmallerResult: FC<SheetPart> = (p) => {
  const { words, view, once, ...refused } = p
  const asked = refusedForm(refused, { kind: 're-issued' })
  const open = view.reIssues?.find((r) => r.decision === null)
  const last = view.reIssues?.at(-1)
  return (
    <section id="smaller-result">
      <h2>{words.say('page.re-issue.bench')}</h2>
      {open ? (
        <>
          <div class="note stop">
            <p>
              <b>{words.say('page.held.smaller-result')}</b>
            </p>
            <ul>
              {open.panels.map((s) => (
                <li>
                  {words.say('page.re-issue.line', {
                    panel: words.say(`panel.${s.panel}`),
                    promised: words.say(`level.${s.promised}`),
                    now: words.say(`level.${s.now}`),
                  })}
                </li>
              ))}
            </ul>
          </div>
          <ByPhone {...p} issue={open.issue} />
        </>
      ) : last?.decision ? (
        <p>
          {words.say(
            last.decision.decision === 'go-on'
              ? 'page.re-issue.bench.yes'
              : `page.re-issue.bench.${last.decision.instead ?? 'stop'}`,
          )}
        </p>
      ) : null}
      <details class="screen-only" open={isRefused(asked)}>
        <summary>{words.say('page.re-issue.ask')}</summary>
        <form method="post" action={paths.benchReIssue(view.id)} novalidate>
          <Once once={`${once}-re-issue`} />
          <input type="hidden" name="kind" value="re-issued" />
          <p class="hint">{words.say('page.re-issue.ask.hint')}</p>
          <Field
            name="text"
            id="f-re-issue"
            label={words.say('page.re-issue.ask.text')}
            rows={3}
            maxlength={2000}
            {...typed(asked, 'text')}
          />
          <Field
            name="net"
            id="f-re-issue-net"
            label={words.say('page.re-issue.ask.net')}
            hint={words.say('page.re-issue.ask.net.hint')}
            inputmode="decimal"
            short
            {...typed(asked, 'net')}
          />
          <div class="acts">
            <Button quiet>{words.say('page.re-issue.ask.button')}</Button>
          </div>
        </form>
      </details>
    </section>
  )
}
