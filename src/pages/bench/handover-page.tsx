import type { FC } from 'hono/jsx'
import type { Blocker } from '../../jobsheet/checks'
import type { Words } from '../../words/render'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary } from '../parts/error-summary'
import { Field } from '../parts/field'
import { money } from '../parts/money-text'
import { paths } from '../paths'

export type HandoverPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly reference: string
  readonly car: string
  readonly blockers: readonly Blocker[]
  /** The account as it comes to now: agreed lines, extras agreed to, work by time as it was. */
  readonly account: {
    readonly lines: readonly { readonly name: string; readonly amount: number }[]
    readonly net: number
    readonly tax: number
    readonly total: number
  }
  readonly quotedTotal: number
  /** What stays open as things stand, a thing a line. */
  readonly openText: string
  /** The lamp the work was looked at under; empty where nobody wrote it down. */
  readonly light: string
  /** Net as it would be typed, for correcting. */
  readonly netText: string
  readonly once: string
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

const blockerText = (words: Words, b: Blocker): string => {
  if (b.kind === 'check')
    return words.say('page.blocker.check', { what: words.say(`check.${b.id}`) })
  if (b.kind === 'refit') return words.say('page.blocker.refit', { item: b.item })
  return words.say('page.blocker.extra')
}

/** Handing the car over: what still stands in the way, the account, and what stays open. */
export const HandoverPage: FC<HandoverPageProps> = (p) => {
  const { words } = p.frame
  const { account, blockers, errors, kept } = p
  const shared = errors ? { errors } : {}
  return (
    <Layout frame={p.frame} title={words.say('page.handover')} bench>
      <ErrorSummary words={words} errors={errors} />
      <section>
        <p class="quietly">
          {p.reference} · {p.car}
        </p>
        <h1>{words.say('page.handover')}</h1>
        {blockers.length > 0 ? (
          <div class="note stop">
            <p>
              <b>{words.say('page.blockers', { n: blockers.length })}</b>
            </p>
            <ul>
              {blockers.map((b) => (
                <li>{blockerText(words, b)}</li>
              ))}
            </ul>
            <p>
              <a href={`${paths.bench(p.id)}#checks`}>{words.say('page.blockers.settle')}</a>
            </p>
          </div>
        ) : null}
      </section>
      <section>
        <h2>{words.say('page.record.account')}</h2>
        <table>
          <tbody>
            <tr>
              <th scope="row">{words.say('page.quote.net')}</th>
              <td class="n">{money(words, account.net)}</td>
            </tr>
            <tr>
              <th scope="row">{words.say('page.record.tax')}</th>
              <td class="n">{money(words, account.tax)}</td>
            </tr>
            <tr class="total">
              <th scope="row">{words.say('page.quote.total')}</th>
              <td class="n">{money(words, account.total)}</td>
            </tr>
          </tbody>
        </table>
        <p class="quietly">
          {words.say('page.handover.quoted', { total: money(words, p.quotedTotal) })}
        </p>
      </section>
      <section class="screen-only">
        <form method="post" action={paths.handover(p.id)} novalidate>
          <Once once={p.once} />
          <Field
            name="net"
            label={words.say('page.handover.net')}
            hint={words.say('page.handover.net.hint')}
            value={keptOne(kept, 'net', p.netText)}
            inputmode="decimal"
            short
            {...shared}
          />
          <Field
            name="paid"
            label={words.say('page.handover.paid')}
            value={keptOne(kept, 'paid')}
            inputmode="decimal"
            short
            {...shared}
          />
          <Field
            name="mileage"
            label={words.say('page.arrival.mileage')}
            value={keptOne(kept, 'mileage')}
            inputmode="numeric"
            short
            {...shared}
          />
          <Field
            name="open"
            label={words.say('page.handover.open')}
            hint={words.say('page.handover.open.hint')}
            rows={4}
            value={keptOne(kept, 'open', p.openText)}
            {...shared}
          />
          <Field
            name="returns"
            type="date"
            label={words.say('page.handover.returns')}
            value={keptOne(kept, 'returns')}
            short
            {...shared}
          />
          <p>
            {words.say('page.handover.light')}{' '}
            {p.light ? words.say('page.handover.lamp', { light: p.light }) : ''}
          </p>
          <Field
            name="name"
            label={words.say('page.handover.name')}
            value={keptOne(kept, 'name')}
            autocomplete="off"
            {...shared}
          />
          <div class="acts">
            <Button>{words.say('page.handover.button')}</Button>
            <a class="button quiet" href={paths.bench(p.id)}>
              {words.say('page.handover.back')}
            </a>
          </div>
        </form>
      </section>
      <section>
        <details>
          <summary>{words.say('page.handover.lines', { n: account.lines.length })}</summary>
          <table>
            <tbody>
              {account.lines.map((l) => (
                <tr>
                  <th scope="row">{l.name}</th>
                  <td class="n">{money(words, l.amount)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      </section>
    </Layout>
  )
}
