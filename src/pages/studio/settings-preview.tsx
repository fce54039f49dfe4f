import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { hours, money } from '../parts/money-text'
import { paths } from '../paths'

type Figures = { readonly total: number; readonly minutes: number }

/** One of the latest estimates with the settings that are in force, and with those on trial. */
export type SettingsPreviewRow = {
  readonly docket: string
  readonly reference: string | null
  readonly car: string
  readonly before: Figures
  readonly after: Figures
}

const sum = (rows: readonly SettingsPreviewRow[], side: 'before' | 'after'): number =>
  rows.reduce((all, r) => all + r[side].total, 0)

/** What other settings would have made of the latest estimates; nothing is saved yet. */
export const SettingsPreview: FC<{
  readonly words: Words
  readonly rows: readonly SettingsPreviewRow[]
}> = ({ words, rows }) => (
  <section id="preview">
    <h2>{words.say('page.preview')}</h2>
    <p role="status">{words.say('page.preview.lead', { n: rows.length })}</p>
    {rows.length > 0 ? (
      <p>
        <b>
          {words.say('page.preview.all', {
            before: sum(rows, 'before'),
            after: sum(rows, 'after'),
          })}
        </b>
      </p>
    ) : null}
    {rows.length === 0 ? null : (
      <table class="stack">
        <thead>
          <tr>
            <th scope="col">{words.say('page.preview.docket')}</th>
            <th scope="col" class="n">
              {words.say('page.trial.before')}
            </th>
            <th scope="col" class="n">
              {words.say('page.trial.after')}
            </th>
            <th scope="col" class="n">
              {words.say('page.trial.labour')}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((r) => (
            <tr>
              <th scope="row">
                <a href={paths.docket(r.docket)}>
                  {[r.reference, r.car].filter(Boolean).join(', ')}
                </a>
              </th>
              <td class="n" data-label={words.say('page.trial.before')}>
                {money(words, r.before.total)}
              </td>
              <td class="n" data-label={words.say('page.trial.after')}>
                {r.before.total === r.after.total ? (
                  money(words, r.after.total)
                ) : (
                  <b>{money(words, r.after.total)}</b>
                )}
              </td>
              <td class="n" data-label={words.say('page.trial.labour')}>
                {words.say('page.preview.labour', {
                  before: hours(words, r.before.minutes),
                  after: hours(words, r.after.minutes),
                })}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    )}
  </section>
)
