import type { FC } from 'hono/jsx'
import type { HandoverRecord } from '../../jobsheet/record'
import type { Words } from '../../words/render'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { date, money } from '../parts/money-text'
import { lineName } from './quote-lines'
import { ReadingsPlot } from './readings-plot'
import { Kept, type RecordKept } from './record-kept'

export type RecordPageProps = {
  readonly frame: Frame
  readonly reference: string
  readonly car: string
  readonly handedOverOn: string
  readonly record: HandoverRecord
  /** Names of work the studio added itself, by step. */
  readonly names?: Readonly<Record<string, string>>
  readonly quoted: { readonly total: number }
  readonly account: {
    readonly net: number
    readonly tax: number
    readonly total: number
    readonly paid?: number
  }
  /** What was found and what became of it, as sentences. */
  readonly findings?: readonly string[]
  /** What stays open, as the studio wrote it. */
  readonly open?: readonly string[]
  /** The day it comes back for what stays open. */
  readonly returns?: string
  readonly kept?: RecordKept
  /** Where its owner says whether all is well. */
  readonly dayHref?: string
}

const um = (words: Words, v: number | null): string =>
  v === null ? words.say('page.record.not-read') : words.say('format.um', { v })

const Readings: FC<{ readonly words: Words; readonly record: HandoverRecord }> = ({
  words,
  record,
}) =>
  record.panels.length === 0 ? null : (
    <section>
      <h2>{words.say('page.record.readings')}</h2>
      <p class="quietly">{words.say('page.record.gauge')}</p>
      <table class="stack">
        <thead>
          <tr>
            <th scope="col">{words.say('page.panel')}</th>
            <th scope="col" class="n">
              {words.say('page.record.before')}
            </th>
            <th scope="col" class="n">
              {words.say('page.record.after')}
            </th>
            <th scope="col">{words.say('page.record.polished')}</th>
            <th scope="col" class="n">
              {words.say('page.record.allowance')}
            </th>
          </tr>
        </thead>
        <tbody>
          {record.panels.map((p) => (
            <tr>
              <th scope="row">{words.say(`panel.${p.panel}`)}</th>
              <td class="n" data-label={words.say('page.record.before')}>
                {um(words, p.before)}
              </td>
              <td class="n" data-label={words.say('page.record.after')}>
                {um(words, p.after)}
              </td>
              <td data-label={words.say('page.record.polished')}>
                {p.polished.length === 0
                  ? words.say('page.record.untouched')
                  : p.polished
                      .map((s) =>
                        [
                          words.say('page.record.sets', {
                            n: s.sets,
                            what: words.say(`sequence.${s.sequence}`),
                          }),
                          ...[s.machine, s.pad, s.abrasive, s.speed].filter(Boolean),
                        ].join(', '),
                      )
                      .join('; ')}
              </td>
              <td class="n" data-label={words.say('page.record.allowance')}>
                {p.allowance === null
                  ? words.say('page.panel.no-number')
                  : words.say('format.um', { v: p.allowance })}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <ReadingsPlot words={words} panels={record.panels} />
    </section>
  )

/** What the owner keeps: what was read, done and left, what to do when, and the account. */
export const RecordPage: FC<RecordPageProps> = (p) => {
  const { words } = p.frame
  const { record, account } = p
  const name = (step: string): string => p.names?.[step] ?? lineName(words, { step })
  const left = (l: HandoverRecord['left'][number]): string =>
    l.why === 'turned-down' ? words.say(`refuse.${l.id}`) : name(l.id)
  return (
    <Layout frame={p.frame} title={words.say('page.record.title', { reference: p.reference })}>
      <section>
        <h1>{words.say('page.record')}</h1>
        <p class="quietly">
          {words.say('page.record.which', {
            reference: p.reference,
            car: p.car,
            date: p.handedOverOn,
          })}
        </p>
        {p.dayHref ? (
          <p class="screen-only">
            <a href={p.dayHref}>{words.say('page.told')}</a>
          </p>
        ) : null}
      </section>
      <Readings words={words} record={record} />
      <section>
        <h2>{words.say('page.record.done')}</h2>
        <ul class="plain">
          {record.done.map((step) => (
            <li>{name(step)}</li>
          ))}
        </ul>
      </section>
      {record.left.length > 0 ? (
        <section>
          <h2>{words.say('page.record.left')}</h2>
          <ul class="plain">
            {record.left.map((l) => (
              <li>
                {left(l)} <span class="quietly">{words.say(`page.record.left.${l.why}`)}</span>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      {p.findings && p.findings.length > 0 ? (
        <section>
          <h2>{words.say('page.record.found')}</h2>
          <ul class="plain">
            {p.findings.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
        </section>
      ) : null}
      {p.open && p.open.length > 0 ? (
        <section>
          <h2>{words.say('page.record.open')}</h2>
          <ul class="plain">
            {p.open.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
          {p.returns ? <p>{words.say('page.record.returns', { date: p.returns })}</p> : null}
        </section>
      ) : null}
      {p.kept ? <Kept words={words} kept={p.kept} /> : null}
      {record.aftercare.length > 0 ? (
        <section>
          <h2>{words.say('page.record.aftercare')}</h2>
          <dl>
            {record.aftercare.map((a) => (
              <>
                <dt>{date(words, a.date)}</dt>
                <dd>{words.say(`aftercare.${a.id}`)}</dd>
              </>
            ))}
          </dl>
        </section>
      ) : null}
      <section>
        <h2>{words.say('page.record.account')}</h2>
        <table>
          <tbody>
            <tr>
              <th scope="row">{words.say('page.record.quoted')}</th>
              <td class="n">{money(words, p.quoted.total)}</td>
            </tr>
            <tr>
              <th scope="row">{words.say('page.quote.net')}</th>
              <td class="n">{money(words, account.net)}</td>
            </tr>
            <tr>
              <th scope="row">{words.say('page.record.tax')}</th>
              <td class="n">{money(words, account.tax)}</td>
            </tr>
          </tbody>
          <tfoot>
            <tr class="total">
              <th scope="row">{words.say('page.quote.total')}</th>
              <td class="n">{money(words, account.total)}</td>
            </tr>
            {account.paid === undefined ? null : (
              <tr>
                <th scope="row">{words.say('page.record.paid')}</th>
                <td class="n">{money(words, account.paid)}</td>
              </tr>
            )}
          </tfoot>
        </table>
      </section>
    </Layout>
  )
}
