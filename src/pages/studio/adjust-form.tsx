import type { FC } from 'hono/jsx'
import type { Adjustment } from '../../docket/kinds'
import type { EstimateStep } from '../../quote/estimate-types'
import type { Words } from '../../words/render'
import { type FieldError, type Kept, keptOne } from '../frame'
import { Button, Once } from '../parts/button'
import { Field } from '../parts/field'
import { fromMinor, hours, money } from '../parts/money-text'
import { Tick } from '../parts/tick'
import { becauseTexts, ReasonList } from '../parts/why'
import { paths } from '../paths'
import { lineName } from '../quote/quote-lines'
import { AdjustLevels } from './adjust-levels'
import { AdjustOptions } from './adjust-options'
import { AdjustWhole } from './adjust-whole'
import type { DocketView } from './docket-view'

export type AdjustFormProps = {
  readonly words: Words
  readonly docket: DocketView
  readonly once: string
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

type Line = { readonly step: string; readonly estimated: EstimateStep | undefined }

const forStep = (words: Words, all: readonly Adjustment[], step: string) => {
  const own = all.filter((a) => 'step' in a && a.step === step)
  const minutes = own.findLast((a) => a.kind === 'minutes')
  const price = own.findLast((a) => a.kind === 'price')
  const remove = own.findLast((a) => a.kind === 'remove')
  const cap = own.findLast((a) => a.kind === 'by-time')
  return {
    minutes: minutes?.kind === 'minutes' ? String(minutes.minutes) : '',
    price: price?.kind === 'price' ? fromMinor(price.amount, words.formats.exponent) : '',
    cap: cap?.kind === 'by-time' ? String(cap.capMinutes) : '',
    removed: remove !== undefined,
    why: own.at(-1)?.why ?? '',
  }
}

/** Changes of one line, folded away until wanted; field names carry the step. */
const LineFields: FC<AdjustFormProps & { readonly step: string }> = (p) => {
  const { words, step, kept } = p
  const now = forStep(words, p.docket.adjustments, step)
  const name = (what: string): string => `${what}:${step}`
  const errors = p.errors ? { errors: p.errors } : {}
  const value = (what: string, was: string): string => keptOne(kept, name(what), was)
  return (
    <details open={(p.errors ?? []).some((e) => e.field.endsWith(`:${step}`))}>
      <summary>{words.say(now.why ? 'page.adjust.changed' : 'page.adjust')}</summary>
      <div class="pair">
        <Field
          name={name('minutes')}
          label={words.say('page.adjust.minutes')}
          value={value('minutes', now.minutes)}
          inputmode="numeric"
          short
          {...errors}
        />
        <Field
          name={name('price')}
          label={words.say('page.adjust.price')}
          value={value('price', now.price)}
          inputmode="decimal"
          short
          {...errors}
        />
        <Field
          name={name('cap')}
          label={words.say('page.adjust.cap')}
          value={value('cap', now.cap)}
          inputmode="numeric"
          short
          {...errors}
        />
      </div>
      <Tick
        type="checkbox"
        name={name('remove')}
        value="1"
        label={words.say('page.adjust.remove')}
        checked={kept?.rev ? keptOne(kept, name('remove')) === '1' : now.removed}
      />
      <Field
        name={name('why')}
        label={words.say('page.adjust.why')}
        value={value('why', now.why)}
        maxlength={500}
        {...errors}
      />
    </details>
  )
}

/** Lines made of charges of the whole job: they are changed there. */
const CHARGES: readonly string[] = ['surcharge', 'travel', 'bay-days']

const Row: FC<AdjustFormProps & { readonly line: Line }> = (p) => {
  const { words, docket, line } = p
  const offered = docket.offer?.lines.find((l) => l.step === line.step)
  const s = line.estimated
  const because = s ? becauseTexts(words, s.because) : []
  const name =
    offered ?? (s?.name === undefined ? { step: line.step } : { step: line.step, name: s.name })
  return (
    <tr>
      <td>
        {lineName(words, name)}
        {offered?.byTime ? (
          <p class="quietly">
            {words.say('page.quote.by-time', {
              cap: hours(words, offered.byTime.capMinutes),
              amount: money(words, offered.byTime.capAmount),
            })}
          </p>
        ) : null}
        {CHARGES.includes(line.step) ? null : <LineFields {...p} step={line.step} />}
      </td>
      <td data-label={words.say('page.because')} class="quietly">
        {because.length > 0 ? (
          <details>
            <summary>{words.say('page.because.n', { n: because.length })}</summary>
            <ul>
              {because.map((text) => (
                <li>{text}</li>
              ))}
            </ul>
            {s?.reasons ? (
              <ReasonList words={words} reasons={s.reasons} />
            ) : s ? (
              <p class="source">{words.say('page.why.source', { source: s.source })}</p>
            ) : null}
          </details>
        ) : null}
      </td>
      <td class="n" data-label={words.say('page.likely')}>
        {s ? hours(words, s.expectedMinutes) : offered ? hours(words, offered.minutes) : ''}
      </td>
      <td class="n" data-label={words.say('page.could-be')}>
        {s
          ? words.say('page.minutes-span', {
              low: s.minutes.optimistic,
              high: s.minutes.pessimistic,
            })
          : ''}
      </td>
      <td class="n" data-label={words.say('page.quote.amount')}>
        {offered ? money(words, offered.amount) : ''}
      </td>
    </tr>
  )
}

/** States a quote may be sent from. */
const SENDABLE: readonly string[] = [
  'received',
  'look-over',
  'quoted',
  'agreed',
  'declined',
  'lapsed',
]

/** All lines with their reasons, and one form that tries a change or saves it as a revision. */
export const AdjustForm: FC<AdjustFormProps> = (p) => {
  const { words, docket, once } = p
  const estimated = docket.estimate?.steps ?? []
  const known = new Set(estimated.map((s) => s.id))
  const lines: readonly Line[] = [
    ...estimated.map((s) => ({ step: s.id, estimated: s })),
    ...(docket.offer?.lines ?? [])
      .filter((l) => !known.has(l.step))
      .map((l) => ({ step: l.step, estimated: undefined })),
  ]
  const maySend = SENDABLE.includes(docket.state)
  const shown = new Set(lines.map((l) => l.step))
  const left = docket.adjustments.flatMap((a) =>
    a.kind === 'remove' && !shown.has(a.step) ? [{ step: a.step, estimated: undefined }] : [],
  )
  return (
    <section id="lines">
      <h2>{words.say('page.docket.lines')}</h2>
      <form method="post" action={paths.docketRevision(docket.id)} novalidate>
        <Once once={once} />
        <input type="hidden" name="rev" value={String(docket.rev)} />
        <table class="stack">
          <thead>
            <tr>
              <th scope="col">{words.say('page.quote.line')}</th>
              <th scope="col">{words.say('page.because')}</th>
              <th scope="col" class="n">
                {words.say('page.likely')}
              </th>
              <th scope="col" class="n">
                {words.say('page.could-be')}
              </th>
              <th scope="col" class="n">
                {words.say('page.quote.amount')}
              </th>
            </tr>
          </thead>
          <tbody>
            {[...lines, ...left].map((line) => (
              <Row {...p} line={line} />
            ))}
          </tbody>
        </table>
        <AdjustLevels {...p} />
        <AdjustOptions {...p} />
        <AdjustWhole {...p} />
        <div class="acts">
          <Button name="act" value="save">
            {words.say('page.adjust.save', { n: docket.revisions.length + 1 })}
          </Button>
          <Button name="act" value="try" quiet>
            {words.say('page.adjust.try')}
          </Button>
          {maySend ? (
            <Button name="act" value="send" quiet>
              {words.say('page.revision.save-send', { n: docket.revisions.length + 1 })}
            </Button>
          ) : null}
        </div>
      </form>
    </section>
  )
}
