import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary } from '../parts/error-summary'
import { Field, Select } from '../parts/field'
import { hours, money } from '../parts/money-text'
import { paths } from '../paths'

export type AccountPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly rev: number
  readonly once: string
  readonly car: string
  readonly account: {
    readonly state: 'open' | 'part' | 'final'
    readonly reference: string | null
    readonly revision: number
    readonly offered: { readonly net: number; readonly tax: number; readonly total: number }
    readonly lines: readonly {
      readonly step: string
      readonly text: string
      readonly offered: number
      readonly charged: number
      readonly planned: number
      readonly used: number | null
      readonly done: 'done' | 'part' | 'not' | 'no-step'
      readonly byTime: boolean
    }[]
    readonly extras: readonly {
      readonly text: string
      readonly amount: number
      readonly minutes: number
    }[]
    readonly corrected: number
    readonly smaller: number
    readonly net: number
    readonly tax: number
    readonly total: number
    readonly deposit: number
    readonly paid: readonly {
      readonly what: string
      readonly amount: number
      readonly on: string
    }[]
    readonly paidTotal: number
    readonly balance: number
  }
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

type Acc = AccountPageProps['account']

const Time: FC<{ readonly words: Words; readonly line: Acc['lines'][number] }> = ({
  words,
  line,
}) =>
  line.done === 'no-step' ? null : (
    <p class="quietly">
      {[
        words.say(line.done === 'part' ? 'page.account.begun' : `page.account.${line.done}`),
        words.say('page.account.planned', { planned: line.planned }),
        ...(line.used === null ? [] : [words.say('page.account.used', { used: line.used })]),
        ...(line.byTime ? [words.say('page.account.by-time')] : []),
      ].join(' · ')}
    </p>
  )

const Sums: FC<{ readonly words: Words; readonly a: Acc }> = ({ words, a }) => (
  <tbody>
    {a.smaller === 0 ? null : (
      <tr>
        <th scope="row">{words.say('page.account.smaller')}</th>
        <td />
        <td class="n">{money(words, a.smaller)}</td>
      </tr>
    )}
    {a.corrected === 0 ? null : (
      <tr>
        <th scope="row">{words.say('page.account.corrected')}</th>
        <td />
        <td class="n">{money(words, a.corrected)}</td>
      </tr>
    )}
    <tr>
      <th scope="row">{words.say('page.quote.net')}</th>
      <td class="n">{money(words, a.offered.net)}</td>
      <td class="n">{money(words, a.net)}</td>
    </tr>
    <tr>
      <th scope="row">{words.say('page.record.tax')}</th>
      <td class="n">{money(words, a.offered.tax)}</td>
      <td class="n">{money(words, a.tax)}</td>
    </tr>
    <tr class="total">
      <th scope="row">{words.say('page.quote.total')}</th>
      <td class="n">{money(words, a.offered.total)}</td>
      <td class="n">{money(words, a.total)}</td>
    </tr>
  </tbody>
)

const Lines: FC<{ readonly words: Words; readonly a: Acc }> = ({ words, a }) => (
  <table class="account">
    <thead>
      <tr>
        <th scope="col">{words.say('page.account.line')}</th>
        <th scope="col" class="n">
          {words.say('page.account.offered')}
        </th>
        <th scope="col" class="n">
          {words.say('page.account.charged')}
        </th>
      </tr>
    </thead>
    <tbody>
      {a.lines.map((l) => (
        <tr>
          <th scope="row">
            {l.text}
            <Time words={words} line={l} />
          </th>
          <td class="n">{money(words, l.offered)}</td>
          <td class="n">{money(words, l.charged)}</td>
        </tr>
      ))}
      {a.extras.map((e) => (
        <tr>
          <th scope="row">
            {e.text}
            <p class="quietly">{`${words.say('page.account.extra')} · ${hours(words, e.minutes)}`}</p>
          </th>
          <td />
          <td class="n">{money(words, e.amount)}</td>
        </tr>
      ))}
    </tbody>
    <Sums words={words} a={a} />
  </table>
)

const PAID = ['deposit', 'part', 'rest', 'back'] as const

/** The final account: offered beside charged by line, extras, tax, deposit, what came in, what is left. */
export const AccountPage: FC<AccountPageProps> = (p) => {
  const { words } = p.frame
  const { account: a, errors, kept } = p
  const shared = errors ? { errors } : {}
  return (
    <Layout frame={p.frame} title={words.say('page.account')} wide>
      <ErrorSummary words={words} errors={errors} />
      <section>
        <p class="quietly">
          {a.reference} · {p.car}
        </p>
        <h1>{words.say('page.account')}</h1>
        <p>{words.say(`page.account.${a.state}`, { revision: a.revision })}</p>
      </section>
      <section>
        <Lines words={words} a={a} />
      </section>
      <section>
        <table class="account">
          <tbody>
            {a.paid.length === 0 && a.deposit > 0 ? (
              <tr>
                <th scope="row">{words.say('page.account.deposit')}</th>
                <td class="n">{money(words, a.deposit)}</td>
              </tr>
            ) : null}
            {a.paid.map((paid) => (
              <tr>
                <th scope="row">{words.say(`page.paid.${paid.what}.on`, { date: paid.on })}</th>
                <td class="n">{money(words, paid.amount)}</td>
              </tr>
            ))}
            <tr class="total">
              <th scope="row">
                {words.say(a.balance < 0 ? 'page.account.over' : 'page.account.balance')}
              </th>
              <td class="n">{money(words, a.balance < 0 ? -a.balance : a.balance)}</td>
            </tr>
          </tbody>
        </table>
      </section>
      <section class="screen-only" id="paid">
        <h2>{words.say('page.paid')}</h2>
        <p class="quietly">{words.say('page.paid.hint')}</p>
        <form method="post" action={paths.docketPaid(p.id)} novalidate>
          <Once once={p.once} />
          <input type="hidden" name="rev" value={String(p.rev)} />
          <div class="pair">
            <Select
              name="what"
              label={words.say('page.paid.what')}
              value={keptOne(kept, 'what', 'rest')}
              options={PAID.map((w) => ({ value: w, label: words.say(`page.paid.${w}`) }))}
            />
            <Field
              name="amount"
              label={words.say('page.paid.amount')}
              inputmode="decimal"
              value={keptOne(kept, 'amount')}
              short
              {...shared}
            />
            <Field
              name="on"
              type="date"
              label={words.say('page.paid.date')}
              value={keptOne(kept, 'on')}
              short
              {...shared}
            />
          </div>
          <div class="acts">
            <Button quiet>{words.say('page.paid.save')}</Button>
          </div>
        </form>
        <p>
          <a href={paths.docketAccountFile(p.id)}>{words.say('page.account.file')}</a>
        </p>
        <p>
          <a href={paths.docket(p.id)}>{words.say('page.account.back')}</a>
        </p>
      </section>
    </Layout>
  )
}
