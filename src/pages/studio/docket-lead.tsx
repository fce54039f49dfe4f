import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { Button, Once } from '../parts/button'
import { chanceWords } from '../parts/chance'
import { clock, date, money } from '../parts/money-text'
import { NotOffered } from '../parts/not-offered'
import { paths } from '../paths'
import { Stale, Trial } from './docket-trial'
import type { DocketView, StaleView, TrialView } from './docket-view'

export type LeadProps = {
  readonly words: Words
  readonly docket: DocketView
  readonly trial?: TrialView
  readonly stale?: StaleView
  /** Set for who may send: the key of the form that does. */
  readonly once?: string
}

/** The offer leads while it is ours to make; later the car and its day do. */
const AHEAD: readonly string[] = [
  'agreed',
  'dated',
  'on-bench',
  'held',
  'finished',
  'handed-over',
  'part-done',
  'uncollected',
  'come-back',
  'not-brought',
  'called-off',
  'turned-down',
  'withdrawn',
]

const Ahead: FC<LeadProps> = ({ words, docket: d }) => (
  <>
    <h1>
      {d.dated && d.state === 'dated'
        ? words.say(d.dated.startMinute === undefined ? 'page.lead.comes' : 'page.lead.comes-at', {
            date: d.dated.start,
            time: clock(words, d.dated.startMinute ?? 0),
          })
        : words.say(`page.lead.${d.state}`)}
    </h1>
    <p>
      {d.dated && d.state !== 'handed-over'
        ? words.say('page.lead.ready', {
            likely: date(words, d.dated.readyLikely.slice(0, 10)),
            cautious: date(words, d.dated.readyCautious.slice(0, 10)),
          })
        : ''}{' '}
      {d.agreedTotal === undefined
        ? ''
        : words.say('page.lead.agreed-total', { total: d.agreedTotal })}
    </p>
  </>
)

const Offered: FC<LeadProps> = ({ words, docket, trial }) => {
  const { offer, estimate } = docket
  if (!offer) return <h1>{words.say('page.docket.no-offer')}</h1>
  return (
    <>
      <h1 class="lead-figure">
        {words.say(trial ? 'page.docket.trial' : 'page.docket.offer', {
          total: money(words, offer.total),
        })}
      </h1>
      <p>
        {words.say('page.docket.enough', { chance: chanceWords(words, offer.chanceEnough) })}{' '}
        {words.say('page.docket.range', { low: offer.low, high: offer.high })}{' '}
        {estimate
          ? words.say('page.docket.labour', {
              low: estimate.labourMinutes.low,
              likely: estimate.labourMinutes.likely,
              high: estimate.labourMinutes.high,
            })
          : ''}
      </p>
    </>
  )
}

/** What was asked for, whether the date and the money hold, and what we do not do. */
const Asked: FC<LeadProps> = ({ words, docket }) => {
  const { estimate, facts } = docket
  const told = ['services', 'wish', 'best-thing'].flatMap((id) => {
    const fact = facts.find((f) => f.question === id)
    const said = fact !== undefined && !fact.unsure && fact.answer !== words.say('answer.left-out')
    return said ? [fact.answer] : []
  })
  return (
    <>
      {told.length > 0 ? <p>{words.say('page.lead.asked', { what: told.join(' · ') })}</p> : null}
      {estimate?.deadline ? (
        <p>
          <b>
            {words.say(`page.lead.deadline.${estimate.deadline.holds}`, {
              date: estimate.deadline.date,
            })}
          </b>
        </p>
      ) : null}
      {estimate?.budget ? (
        <p>
          {words.say('page.lead.budget', {
            amount: estimate.budget.amount,
            chance: chanceWords(words, estimate.budget.chance),
          })}
        </p>
      ) : null}
      {(estimate?.scope.turnedDown ?? []).map((t) => (
        <div class="note stop">
          <p>
            <b>{words.say(`refuse.${t.id}`, t.params)}</b>
          </p>
          <p>{words.say(`refuse.${t.id}.turn`, t.params)}</p>
        </div>
      ))}
      {estimate ? <NotOffered words={words} scope={estimate.scope} /> : null}
    </>
  )
}

/** Something is turned down or stops the work: that is read before anything is sent. */
const held = ({ estimate }: DocketView): boolean =>
  estimate === null ||
  estimate.scope.turnedDown.length > 0 ||
  estimate.riskNotes.some((n) => n.severity === 'stop')

/** The quote as the engine makes it, sent with one press while nothing was changed. */
const SendAsItIs: FC<LeadProps & { readonly once: string }> = ({ words, docket, once }) =>
  docket.state === 'received' &&
  docket.revisions.length === 0 &&
  docket.adjustments.length === 0 &&
  docket.offer &&
  !held(docket) ? (
    <form method="post" action={paths.docketRevision(docket.id)} class="screen-only">
      <Once once={`${once}-as-it-is`} />
      <input type="hidden" name="rev" value={String(docket.rev)} />
      <div class="acts">
        <Button name="act" value="send">
          {words.say('page.lead.send')}
        </Button>
        <a class="button quiet" href="#lines">
          {words.say('page.lead.change')}
        </a>
      </div>
    </form>
  ) : null

/** What stands first: who wrote meanwhile, where the docket stands, what a trial would change. */
export const DocketLead: FC<LeadProps> = (p) => {
  const { words, docket, trial, stale } = p
  const ahead = AHEAD.includes(docket.state) && !trial
  return (
    <>
      {stale ? <Stale words={words} stale={stale} /> : null}
      <section>
        <p class="quietly">
          {[
            docket.reference ?? words.say('page.list.no-reference'),
            docket.car,
            docket.plate,
            docket.person?.name,
            words.say(`page.state.${docket.state}`),
          ]
            .filter(Boolean)
            .join(' · ')}
        </p>
        {docket.whyMoved ? <p class="quietly">{docket.whyMoved}</p> : null}
        {ahead ? <Ahead {...p} /> : <Offered {...p} />}
        <Asked {...p} />
        {p.once && !trial && !stale ? <SendAsItIs {...p} once={p.once} /> : null}
        {docket.dropped.length > 0 ? (
          <div>
            <p>{words.say('page.docket.dropped', { n: docket.dropped.length })}</p>
            <ul>
              {docket.dropped.map((text) => (
                <li>{text}</li>
              ))}
            </ul>
          </div>
        ) : null}
      </section>
      {trial ? <Trial words={words} trial={trial} /> : null}
    </>
  )
}
