import type { FC } from 'hono/jsx'
import type { SheetPart } from './bench-view'

/** What the owner told of the car, the very facts the price came from. */
export const Told: FC<Pick<SheetPart, 'words' | 'view'>> = ({ words, view }) =>
  view.facts.length === 0 ? null : (
    <section id="told">
      <details>
        <summary>{words.say('page.bench.told', { n: view.facts.length })}</summary>
        <dl>
          {view.facts.map((f) => (
            <>
              <dt>{f.prompt}</dt>
              <dd>{f.answer}</dd>
            </>
          ))}
        </dl>
      </details>
    </section>
  )
