import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'

export type RecordKept = {
  readonly kept: readonly { readonly what: string; readonly value: string }[]
  readonly mileage: { readonly in: number | null; readonly out: number | null }
  readonly waived: readonly { readonly check: string; readonly why: string }[]
  /** Extra work the owner was asked about and did not want. */
  readonly refused: readonly string[]
}

/** What the record keeps for whoever works on the car next: batch, light, distance, what was left out. */
export const Kept: FC<{ readonly words: Words; readonly kept: RecordKept }> = ({ words, kept }) => {
  const { in: came, out } = kept.mileage
  const lines = [
    ...(came === null || out === null ? [] : [words.say('page.record.mileage', { in: came, out })]),
    ...kept.waived.map((w) =>
      words.say('page.record.waived', { check: words.say(`check.${w.check}`), why: w.why }),
    ),
    ...kept.refused.map((text) => words.say('page.record.refused', { text })),
  ]
  return kept.kept.length + lines.length === 0 ? null : (
    <section>
      <h2>{words.say('page.record.kept')}</h2>
      <ul class="plain">
        {kept.kept.map((k) => (
          <li>
            <b>{words.say(`page.recorded.${k.what}`)}</b> {k.value}
          </li>
        ))}
        {lines.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </section>
  )
}
