import type { FC } from 'hono/jsx'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary } from '../parts/error-summary'
import { date, money } from '../parts/money-text'
import { paths } from '../paths'
import { ReIssueCard, type ReIssueView } from './re-issue'
import { Talk, type TalkView } from './talk'

export type ExtraView = {
  readonly extra: string
  readonly text: string
  readonly minutes: number
  /** With tax. */
  readonly total: number
  readonly decision: 'agree' | 'refuse' | null
  /** What happens on a no, in the studio's words. */
  readonly ifNot?: string
  readonly photoSrc?: string
}

export type AgreedPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly reference: string
  readonly total: number
  readonly deposit: number
  readonly agreedOn: string
  readonly name: string
  /** Set when a day is fixed: when to bring it, when it should be ready. */
  readonly dated?: {
    readonly start: string
    readonly startMinute?: number
    readonly readyLikely: string
    readonly readyCautious: string
  }
  /** What to prepare, as sentences. */
  readonly before?: readonly string[]
  readonly extras?: readonly ExtraView[]
  /** Results that measuring made smaller, the newest last. */
  readonly reIssues?: readonly ReIssueView[]
  readonly talk?: TalkView
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
  /** The option chosen, by name. */
  readonly chosen?: string | null
  /** What needs no asking. */
  readonly agreement?: { readonly limit: number }
  readonly once: string
  readonly recordHref?: string
}

const sameDay = (dated: NonNullable<AgreedPageProps['dated']>): boolean =>
  dated.readyLikely.slice(0, 10) === dated.readyCautious.slice(0, 10)

const Extra: FC<AgreedPageProps & { readonly extra: ExtraView }> = (p) => {
  const { frame, id, extra, once } = p
  const { words } = frame
  const of = { total: money(words, extra.total), minutes: extra.minutes }
  return (
    <div class="note decide">
      <p class="severity">{words.say('page.severity.decide')}</p>
      <p>
        <b>{extra.text}</b>
      </p>
      {extra.photoSrc ? (
        <p>
          <img src={extra.photoSrc} alt={words.say('page.extra.photo')} width="320" height="240" />
        </p>
      ) : null}
      <p>{words.say('page.extra.asks', of)}</p>
      {extra.decision === null ? (
        <p>
          {extra.ifNot
            ? words.say('page.extra.if-not', { text: extra.ifNot })
            : words.say('page.extra.if-not-plain')}
        </p>
      ) : null}
      {extra.decision ? (
        <p>{words.say(`page.extra.${extra.decision}`)}</p>
      ) : (
        <form method="post" action={paths.extraDecision(id, extra.extra)}>
          <Once once={`${once}-${extra.extra}`} />
          <input type="hidden" name="name" value={p.name} />
          <div class="acts">
            <Button name="decision" value="agree">
              {words.say('page.extra.say-yes', of)}
            </Button>
            <Button name="decision" value="refuse" quiet>
              {words.say('page.extra.say-no')}
            </Button>
          </div>
        </form>
      )}
    </div>
  )
}

/** Fields of the refused form that bear an id of their own. */
const idsOf = (kept: Kept | undefined): Readonly<Record<string, string>> => ({
  name: keptOne(kept, 'decision') === 'no' ? 'f-name-no' : 'f-name-yes',
  text: 'f-ask',
})

/** After the yes: what was agreed, when to come, and any question that came up since. */
export const AgreedPage: FC<AgreedPageProps> = (p) => {
  const { words } = p.frame
  const { dated, extras = [], before = [], reIssues = [] } = p
  const refused = { ...(p.errors ? { errors: p.errors } : {}), ...(p.kept ? { kept: p.kept } : {}) }
  return (
    <Layout frame={p.frame} title={words.say('page.agreed')}>
      <ErrorSummary words={words} errors={p.errors} ids={idsOf(p.kept)} />
      <section>
        <h1>{words.say('page.agreed')}</h1>
        <p>
          {words.say('page.agreed.what', {
            reference: p.reference,
            total: money(words, p.total),
            name: p.name,
            date: p.agreedOn,
          })}
        </p>
        {p.chosen ? <p>{words.say('option.chosen', { name: p.chosen })}</p> : null}
        {p.agreement ? (
          <p>
            {words.say(p.agreement.limit > 0 ? 'page.limit.yours' : 'page.limit.yours-none', {
              limit: p.agreement.limit,
            })}
          </p>
        ) : null}
        {p.deposit > 0 ? (
          <p>{words.say('page.agreed.deposit', { amount: money(words, p.deposit) })}</p>
        ) : null}
        <p>
          {dated
            ? words.say(
                dated.startMinute === undefined ? 'page.agreed.day' : 'page.agreed.day-at',
                { start: dated.start, at: dated.startMinute ?? 0 },
              )
            : words.say('page.agreed.no-day')}
        </p>
        {dated ? (
          <p>
            {words.say(sameDay(dated) ? 'page.agreed.ready-same' : 'page.agreed.ready', {
              likely: date(words, dated.readyLikely.slice(0, 10)),
              cautious: date(words, dated.readyCautious.slice(0, 10)),
            })}
          </p>
        ) : null}
        <p>
          <a href={paths.day(p.id)}>{words.say('page.day.see')}</a>
        </p>
        <p>
          <a href={paths.quote(p.id)}>{words.say('page.agreed.quote')}</a>
        </p>
        {p.recordHref ? (
          <p>
            <a href={p.recordHref}>{words.say('page.record.see')}</a>
          </p>
        ) : null}
      </section>
      {reIssues.length > 0 ? (
        <section id="re-issue">
          {reIssues.map((view) => (
            <ReIssueCard
              words={words}
              id={p.id}
              once={p.once}
              name={p.name}
              view={view}
              {...refused}
            />
          ))}
        </section>
      ) : null}
      <Talk words={words} talk={p.talk} />
      {extras.length > 0 ? (
        <section>
          <h2>{words.say('page.extras')}</h2>
          {extras.map((extra) => (
            <Extra {...p} extra={extra} />
          ))}
        </section>
      ) : null}
      {before.length > 0 ? (
        <section>
          <h2>{words.say('page.agreed.before')}</h2>
          <ul>
            {before.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
        </section>
      ) : null}
    </Layout>
  )
}
