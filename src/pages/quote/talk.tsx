import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { date } from '../parts/money-text'

export type TalkView = readonly {
  readonly from: 'customer' | 'studio'
  readonly text: string
  readonly on: string
}[]

/** A question asked and what the studio replied, in order. */
export const Talk: FC<{ readonly words: Words; readonly talk?: TalkView | undefined }> = ({
  words,
  talk = [],
}) =>
  talk.length === 0 ? null : (
    <section>
      <h2>{words.say('page.talk')}</h2>
      <ol class="lines">
        {talk.map((t) => (
          <li>
            <p class="asked">
              {words.say(`page.talk.${t.from}`)}, {date(words, t.on)}
            </p>
            <p class="said">{t.text}</p>
          </li>
        ))}
      </ol>
    </section>
  )
