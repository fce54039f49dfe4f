import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { hours } from '../parts/money-text'
import { paths } from '../paths'
import type { BenchView } from './bench-view'
import { sheetStepName } from './current-step'

/** All steps in working order with how they stand; on paper each has a box. */
export const StepList: FC<{ readonly words: Words; readonly view: BenchView }> = ({
  words,
  view,
}) => (
  <section class="steps" id="steps">
    <h2>{words.say('page.steps')}</h2>
    <p class="quietly">
      {words.say('page.steps.minutes', {
        planned: view.sheet.minutes.planned,
        used: view.sheet.minutes.used,
      })}
    </p>
    <ol class="lines">
      {view.sheet.steps.map((s) => (
        <li>
          <span class="box paper-inline" aria-hidden="true" />
          <a
            href={paths.benchStep(view.id, s.id)}
            aria-current={s.id === view.current ? 'step' : undefined}
          >
            {sheetStepName(words, s)}
          </a>
          <span class="quietly">
            {words.say(`page.step.${s.state}`)} · {hours(words, s.expectedMinutes)}
          </span>
        </li>
      ))}
    </ol>
  </section>
)
