import type { Child, FC } from 'hono/jsx'
import type { Note } from '../../quote/estimate-types'
import type { Words } from '../../words/render'
import { Why } from './why'

export type NoteViewProps = {
  readonly words: Words
  readonly note: Note
  /** What the bench does about it instead of what it means for the owner. */
  readonly bench?: boolean
  /** For the studio: the whole chain behind the note. */
  readonly full?: boolean
  /** A box to tick under the note. */
  readonly children?: Child
}

const sentence = (words: Words, key: string, note: Note): string | null =>
  words.has(key) ? words.say(key, note.params) : null

/** One risk note: its severity is a word and the weight of the rule beside it. */
export const NoteView: FC<NoteViewProps> = ({ words, note, bench, full, children }) => {
  const text = sentence(words, `risk.${note.id}.${bench ? 'bench' : 'means'}`, note)
  const decision = note.decision ? sentence(words, `risk.${note.id}.decision`, note) : null
  const caution = note.caution === null ? null : `caution.${note.caution}`
  return (
    <div class={`note ${note.severity}`}>
      <p class="severity">{words.say(`page.severity.${note.severity}`)}</p>
      <p>
        <b>{words.say(`risk.${note.id}`, note.params)}</b>
      </p>
      {text ? <p>{text}</p> : null}
      {decision && !bench ? <p>{decision}</p> : null}
      {caution && words.has(caution) ? <p>{words.say(caution)}</p> : null}
      <Why
        words={words}
        because={note.because}
        {...(full && note.reasons ? { reasons: note.reasons } : { source: note.source })}
      />
      {children}
    </div>
  )
}
