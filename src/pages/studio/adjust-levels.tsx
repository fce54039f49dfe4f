import type { FC } from 'hono/jsx'
import { POLISH_LEVELS } from '../../quote/context'
import { keptOne } from '../frame'
import { Field, Select } from '../parts/field'
import { Tick } from '../parts/tick'
import type { AdjustFormProps } from './adjust-form'

/** How deep each panel is polished, and which notes are left out: folded away until wanted. */
export const AdjustLevels: FC<AdjustFormProps> = (p) => {
  const { words, docket, kept, errors } = p
  const shared = errors ? { errors } : {}
  const { adjustments, estimate } = docket
  const panels = estimate?.paint.panels ?? []
  const polished = estimate ? estimate.scope.level !== 'none' : false
  const chosen = (panel?: string): string => {
    const a = adjustments.findLast((x) => x.kind === 'level' && x.panel === panel)
    return a?.kind === 'level' ? a.level : ''
  }
  const levels = adjustments.filter((a) => a.kind === 'level')
  const waived = adjustments.flatMap((a) => (a.kind === 'waive-note' ? [a.note] : []))
  const notes = [...new Set([...waived, ...(estimate?.riskNotes ?? []).map((n) => n.id)])]
  const open = (fields: readonly string[]): boolean =>
    (errors ?? []).some((e) => fields.includes(e.field))
  const options = [
    { value: '', label: words.say('page.adjust.level.as-wished') },
    ...POLISH_LEVELS.map((value) => ({ value, label: words.say(`level.${value}`) })),
  ]
  return (
    <>
      {polished || levels.length > 0 ? (
        <details open={open(['level-why'])}>
          <summary>
            {words.say(levels.length > 0 ? 'page.adjust.levels.changed' : 'page.adjust.levels')}
          </summary>
          <p class="hint">{words.say('page.adjust.levels.hint')}</p>
          <Select
            name="level"
            label={words.say('change.whole-car')}
            options={options}
            value={keptOne(kept, 'level', chosen())}
          />
          <div class="columns">
            {panels.map(({ panel }) => (
              <Select
                name={`level:${panel}`}
                label={words.say(`panel.${panel}`)}
                options={options}
                value={keptOne(kept, `level:${panel}`, chosen(panel))}
              />
            ))}
          </div>
          <Field
            name="level-why"
            label={words.say('page.adjust.why')}
            value={keptOne(kept, 'level-why', levels.at(-1)?.why ?? '')}
            maxlength={500}
            {...shared}
          />
        </details>
      ) : null}
      {notes.length > 0 ? (
        <details open={open(['note-why'])}>
          <summary>
            {words.say(waived.length > 0 ? 'page.adjust.notes.changed' : 'page.adjust.notes')}
          </summary>
          {notes.map((id) => {
            const note = estimate?.riskNotes.find((n) => n.id === id)
            return (
              <Tick
                type="checkbox"
                name={`waive:${id}`}
                value="1"
                label={
                  note
                    ? words.say(`risk.${id}`, note.params)
                    : words.say('page.adjust.note-out', { id })
                }
                checked={kept?.rev ? keptOne(kept, `waive:${id}`) === '1' : waived.includes(id)}
              />
            )
          })}
          <Field
            name="note-why"
            label={words.say('page.adjust.why')}
            value={keptOne(
              kept,
              'note-why',
              adjustments.findLast((a) => a.kind === 'waive-note')?.why ?? '',
            )}
            maxlength={500}
            {...shared}
          />
        </details>
      ) : null}
    </>
  )
}
