import type { FC } from 'hono/jsx'
import type { EstimatePlan, PlanDayOut } from '../../quote/estimate-types'
import type { Words } from '../../words/render'
import { clock, date } from './money-text'

export type TimetableProps = {
  readonly words: Words
  readonly plan: EstimatePlan
  readonly stepName: (step: string) => string
}

/** The working day drawn to scale runs from its first to its last minute. */
const edges = (day: PlanDayOut) => ({
  from: Math.min(...day.blocks.map((b) => b.from)),
  to: Math.max(...day.blocks.map((b) => b.to)),
})

const DayLine: FC<{ readonly day: PlanDayOut }> = ({ day }) => {
  if (day.blocks.length === 0) return null
  const { from, to } = edges(day)
  const y = (minute: number): string =>
    `${(((minute - from) / (to - from || 1)) * 100).toFixed(1)}%`
  return (
    <svg width="12" aria-hidden="true">
      <line class="thin" x1="6" x2="6" y1="0" y2="100%" />
      {day.blocks.map((b) => (
        <line x1="6" x2="6" y1={y(b.from)} y2={y(b.to)} stroke-width="3" />
      ))}
    </svg>
  )
}

const crew = (words: Words, people: readonly number[], of: number): string | null =>
  of < 2 || people.length === 0
    ? null
    : words.say('page.day.people', { who: people.map((n) => String(n + 1)) })

/** The plan in words, a short block a day, with what dries meanwhile. */
export const Timetable: FC<TimetableProps> = ({ words, plan, stepName }) => (
  <div>
    {plan.days.map((day) => (
      <div class="day">
        <h3>{date(words, day.date)}</h3>
        <DayLine day={day} />
        <ul class="plain">
          {day.blocks.map((b) => {
            const who = crew(words, b.people, plan.people)
            return (
              <li>
                <span class="figure">{words.say('page.day.span', { from: b.from, to: b.to })}</span>{' '}
                {stepName(b.step)}
                {who ? <span class="quietly"> ({who})</span> : null}
              </li>
            )
          })}
          {day.drying.map((d) => (
            <li class="quietly">
              {words.say('page.day.drying', {
                what: stepName(d.step),
                date: d.date,
                time: clock(words, d.minute),
              })}
            </li>
          ))}
        </ul>
      </div>
    ))}
  </div>
)
