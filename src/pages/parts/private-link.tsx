import { raw } from 'hono/html'
import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { Field } from './field'

export type PrivateLinkProps = {
  readonly words: Words
  readonly link: string
  readonly label: string
  /** Drawn on the server from the link alone; never anything a person typed. */
  readonly qrSvg?: string
  readonly id?: string
}

/** A link to keep: to copy, and as a code for another device's camera. */
export const PrivateLink: FC<PrivateLinkProps> = ({ words, link, label, qrSvg, id }) => (
  <div>
    <Field
      name="link"
      label={label}
      value={link}
      readonly
      {...(id ? { id } : {})}
      autocomplete="off"
    />
    <button type="button" class="quiet" hidden data-copy={id ?? 'f-link'}>
      {words.say('page.copy')}
    </button>
    <span role="status" class="quietly" data-copied={words.say('page.copied')} />
    {qrSvg ? (
      <figure class="qr" role="img" aria-label={words.say('page.qr')}>
        {raw(qrSvg)}
      </figure>
    ) : null}
  </div>
)
