import type { FC } from 'hono/jsx'
import type { Calibration, PaceProposal } from '../../jobsheet/pace'
import type { Words } from '../../words/render'
import { Button, Once } from '../parts/button'
import { paths } from '../paths'

export type OwnPaceProps = {
  readonly words: Words
  readonly proposals: readonly PaceProposal[]
  readonly calibration: Calibration
  readonly rev: number
  readonly once: string
}

const percent = (x: number): number => Math.round(x * 100)

/** What finished jobs say of the studio's own pace; nothing changes before it is taken. */
export const OwnPaceView: FC<OwnPaceProps> = ({ words, proposals, calibration: c, rev, once }) => (
  <section id="own-pace">
    <h2>{words.say('page.pace')}</h2>
    <p>
      {c.jobs === 0
        ? words.say('page.pace.no-jobs')
        : words.say(`page.pace.says.${c.says}`, {
            within: c.within,
            n: c.jobs,
            low: percent(c.low),
            high: percent(c.high),
          })}
    </p>
    <ul class="plain">
      {proposals.map((p) => (
        <li>
          <b>{words.say(`step.${p.step}`)}</b>{' '}
          {words.say('page.pace.proposal', {
            n: p.jobs,
            seen: percent(p.seen),
            pace: percent(p.pace),
            low: percent(p.low),
            high: percent(p.high),
          })}
          <form method="post" action={paths.settingsPace} novalidate>
            <Once once={`${once}-pace-${p.step}`} />
            <input type="hidden" name="rev" value={String(rev)} />
            <input type="hidden" name="step" value={p.step} />
            <input type="hidden" name="pace" value={String(percent(p.pace))} />
            <div class="acts">
              <Button quiet>
                {words.say('page.pace.take', { pace: percent(p.pace) })}
                <span class="unseen"> {words.say(`step.${p.step}`)}</span>
              </Button>
            </div>
          </form>
        </li>
      ))}
    </ul>
  </section>
)
