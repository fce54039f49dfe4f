import type { FC } from 'hono/jsx'
import { ArrivalDamage } from './arrival-damage'
import type { SheetPart } from './bench-view'
import { FindingLine } from './finding-line'

/** How the car came: what was written down before work, and the damage that was there. */
export const Came: FC<SheetPart> = (p) => {
  const { words, view } = p
  const { checkIn: came, came: said } = view
  if (!came) return null
  const rows: readonly (readonly [string, string])[] = [
    ['page.arrival.mileage', came.mileage === undefined ? '' : String(came.mileage)],
    ['page.arrival.fuel', came.fuel ?? ''],
    ['page.arrival.keys', came.keys === undefined ? '' : String(came.keys)],
    [
      'page.arrival.locking-key',
      came.lockingKey ? words.say(`page.locking-key.${came.lockingKey}`) : '',
    ],
    ['page.arrival.warnings', said.warnings],
    ['page.arrival.valuables', said.valuables],
    ['page.arrival.notes', said.notes],
    ['page.arrival.name', said.name],
  ]
  const damage = view.findings.filter((f) => f.arrival)
  return (
    <section id="came" class="fold">
      <details>
        <summary>
          <h2>{words.say('page.came', { n: damage.length })}</h2>
        </summary>
        <dl>
          {rows
            .filter(([, value]) => value !== '')
            .map(([key, value]) => (
              <>
                <dt>{words.say(key)}</dt>
                <dd>{value}</dd>
              </>
            ))}
          <dt>{words.say('page.came.consents')}</dt>
          <dd>
            {came.consents.length === 0
              ? words.say('page.came.no-consent')
              : came.consents.map((c) => (
                  <>
                    {words.say(`page.consent.${c}`)}
                    <br />
                  </>
                ))}
          </dd>
        </dl>
        <ul class="plain">
          {damage.map((f) => (
            <FindingLine words={words} finding={f} />
          ))}
        </ul>
        <ArrivalDamage {...p} />
      </details>
    </section>
  )
}
