import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { FieldError, Kept } from '../frame'
import { Button, Once } from '../parts/button'
import { Field, Select } from '../parts/field'
import { date } from '../parts/money-text'
import { typed } from '../parts/refused'
import { paths } from '../paths'
import { DateForm } from './date-form'
import { Parting } from './docket-asking'
import type { DocketView, MessageView } from './docket-view'
import { HowTold } from './how-told'

export type ActsProps = {
  readonly words: Words
  readonly docket: DocketView
  readonly once: string
  readonly message?: MessageView
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

export const Rev: FC<ActsProps & { readonly what: string }> = ({ docket, once, what }) => (
  <>
    <Once once={`${once}-${what}`} />
    <input type="hidden" name="rev" value={String(docket.rev)} />
  </>
)

/** Revisions with the button that sends one, and the message to paste. */
export const Revisions: FC<ActsProps> = (p) => {
  const { words, docket } = p
  if (docket.revisions.length === 0) return null
  return (
    <section id="revisions">
      <h2>{words.say('page.revisions')}</h2>
      <ol class="lines">
        {docket.revisions.map((r) => (
          <li>
            <p>
              {words.say(r.sentAt === null ? 'page.revision.saved' : 'page.revision.sent', {
                n: r.revision,
                total: r.totalText,
                date: r.validUntil,
              })}
            </p>
            {r.offer.deposit > 0 ? (
              <p class="quietly">
                {words.say('page.revision.deposit', { deposit: r.depositText })}
              </p>
            ) : null}
            {r.options.length > 0 ? (
              <ul>
                {r.options.map((text) => (
                  <li>{text}</li>
                ))}
              </ul>
            ) : null}
            {r.changes.length > 0 ? (
              <details>
                <summary>{words.say('page.revision.changes')}</summary>
                <ul>
                  {r.changes.map((text) => (
                    <li>{text}</li>
                  ))}
                </ul>
              </details>
            ) : null}
            {r.sentAt === null && r.revision === docket.revisions.at(-1)?.revision ? (
              <form method="post" action={paths.docketSending(docket.id, r.revision)}>
                <Rev {...p} what={`send-${r.revision}`} />
                <div class="acts">
                  <Button>{words.say('page.revision.send', { n: r.revision })}</Button>
                </div>
              </form>
            ) : null}
          </li>
        ))}
      </ol>
    </section>
  )
}

const enc = encodeURIComponent

/** Ready to paste, or to write in the device's own mail or messages. */
export const Message: FC<{
  readonly words: Words
  readonly docket: DocketView
  readonly once: string
  readonly message: MessageView
}> = ({ words, docket, once, message: m }) => (
  <section class="screen-only" id="message">
    <Field name="paste" label={words.say('page.message')} rows={8} value={m.text} readonly />
    <div class="acts">
      <button type="button" class="quiet" hidden data-copy="f-paste">
        {words.say('page.copy')}
      </button>
      <span role="status" class="quietly" data-copied={words.say('page.copied')} />
      {m.email ? (
        <a
          class="button quiet"
          href={`mailto:${enc(m.email)}?subject=${enc(m.subject)}&body=${enc(m.text)}`}
        >
          {words.say('page.message.mail')}
        </a>
      ) : null}
      {m.phone ? (
        <a class="button quiet" href={`sms:${m.phone.replace(/[^+\d]/g, '')}?&body=${enc(m.text)}`}>
          {words.say('page.message.sms')}
        </a>
      ) : null}
    </div>
    <p class="quietly">{words.say('page.message.not-sent')}</p>
    {m.line ? (
      <HowTold
        words={words}
        docket={docket.id}
        rev={docket.rev}
        line={m.line}
        once={once}
        back="docket"
      />
    ) : null}
  </section>
)

/** A reply to the customer's question. */
export const Reply: FC<ActsProps> = (p) =>
  p.docket.question === null ? null : (
    <section class="screen-only" id="reply">
      <h2>{p.words.say('page.reply')}</h2>
      <p class="said">{p.docket.question}</p>
      <form method="post" action={paths.docketReply(p.docket.id)}>
        <Rev {...p} what="reply" />
        <Field
          name="text"
          id="f-reply"
          label={p.words.say('page.reply.text')}
          rows={4}
          maxlength={2000}
          {...typed(p.kept?.question ? {} : p, 'text')}
        />
        <div class="acts">
          <Button>{p.words.say('page.reply.send')}</Button>
        </div>
      </form>
    </section>
  )

/** Moves that have a form of their own, or follow from what is done. */
const OWN_FORM: readonly string[] = ['dated', 'quoted', 'agreed', 'look-over', 'turned-down']

/** Fixing the day, and the moves this state allows. */
export const Moves: FC<ActsProps> = (p) => {
  const { words, docket } = p
  const moves = docket.moves.filter((m) => !OWN_FORM.includes(m))
  const parting = docket.moves.includes('look-over') || docket.moves.includes('turned-down')
  const mayDate = docket.moves.includes('dated')
  if (moves.length === 0 && !mayDate && !parting) return null
  return (
    <section class="screen-only" id="moves">
      <h2>{words.say('page.moves')}</h2>
      {mayDate ? <DateForm {...p} /> : null}
      <Parting {...p} />
      {moves.length > 0 ? (
        <details>
          <summary>{words.say('page.move')}</summary>
          <form method="post" action={paths.docketMove(docket.id)}>
            <Rev {...p} what="move" />
            <Select
              name="to"
              label={words.say('page.move.to')}
              options={moves.map((m) => ({ value: m, label: words.say(`page.state.${m}`) }))}
            />
            <Field
              name="why"
              id="f-move-why"
              label={words.say('page.move.why')}
              rows={2}
              maxlength={1000}
            />
            <div class="acts">
              <Button quiet>{words.say('page.move.button')}</Button>
            </div>
          </form>
        </details>
      ) : null}
    </section>
  )
}

/** Every line of the docket, newest last; a struck one stays readable. */
export const History: FC<Pick<ActsProps, 'words' | 'docket'>> = ({ words, docket }) => (
  <section>
    <details>
      <summary>{words.say('page.history', { n: docket.history.length })}</summary>
      <ol class="lines">
        {docket.history.map((h) => (
          <li>
            <p class="asked">
              <time
                datetime={h.at}
              >{`${date(words, h.at.slice(0, 10))} ${h.at.slice(11, 16)}`}</time>
              {` · ${words.say(`page.by.${h.by}`)}`}
            </p>
            <p>{h.struck ? <s>{h.text}</s> : h.text}</p>
            {h.said ? <p class="said-plainly">{h.said}</p> : null}
            {h.struck ? <p class="quietly">{words.say('page.struck', { why: h.struck })}</p> : null}
          </li>
        ))}
      </ol>
    </details>
  </section>
)
