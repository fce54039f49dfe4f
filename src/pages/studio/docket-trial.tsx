import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { StaleView, TrialView } from './docket-view'

/** Before and after of what was tried, in words, side by side. */
export const Trial: FC<{ readonly words: Words; readonly trial: TrialView }> = ({
  words,
  trial,
}) => (
  <section id="trial">
    <p role="status">{words.say('page.docket.trial.lead')}</p>
    <table class="stack">
      <caption class="unseen">{words.say('page.trial')}</caption>
      <thead>
        <tr>
          <th scope="col">{words.say('page.trial.what')}</th>
          <th scope="col">{words.say('page.trial.before')}</th>
          <th scope="col">{words.say('page.trial.after')}</th>
        </tr>
      </thead>
      <tbody>
        {trial.rows.map((r) => (
          <tr>
            <th scope="row">{r.what}</th>
            <td data-label={words.say('page.trial.before')}>{r.before}</td>
            <td data-label={words.say('page.trial.after')}>
              {r.before === r.after ? r.after : <b>{r.after}</b>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
    {(trial.options ?? []).length > 0 ? (
      <ul>
        {(trial.options ?? []).map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    ) : null}
    {trial.notesNew.length + trial.notesGone.length === 0 ? (
      <p>{words.say('page.trial.notes-same')}</p>
    ) : (
      <ul>
        {trial.notesNew.map((text) => (
          <li>{words.say('page.trial.note-new', { text })}</li>
        ))}
        {trial.notesGone.map((text) => (
          <li>{words.say('page.trial.note-gone', { text })}</li>
        ))}
      </ul>
    )}
  </section>
)

/** What somebody else wrote meanwhile, and that nothing typed is lost. */
export const Stale: FC<{ readonly words: Words; readonly stale: StaleView }> = ({
  words,
  stale,
}) => (
  <section id="stale">
    <div class="note decide" role="alert">
      <p>
        <b>{words.say('page.stale')}</b>
      </p>
      <ul>
        {stale.lines.map((l) => (
          <li>
            {l.text} <span class="quietly">{words.say(`page.by.${l.by}`)}</span>
          </li>
        ))}
      </ul>
      <p>{words.say('page.stale.kept')}</p>
      {stale.both.length > 0 ? <p>{words.say('page.stale.both', { what: stale.both })}</p> : null}
    </div>
  </section>
)
