import type { Session } from '../intake/session'
import { type Context, owns } from './context'
import type { Estimate } from './estimate-types'
import { events } from './events'
import { type RunEvent, type RunStep, runEvent, runStep } from './needs'
import { refusalsOf } from './refusals'
import { steps as catalogue } from './steps'
import { notOffered, unguarded } from './unguarded'

/** What the rules found for one set of answers, and what of it is not offered here. */
export type Runs = {
  readonly steps: readonly RunStep[]
  readonly events: readonly RunEvent[]
  readonly lacking: Estimate['scope']['lacking']
  readonly switchedOff: readonly string[]
}

/** Runs the whole catalogue: steps, events, and the steps that are needed but not offered. */
export const runAll = (told: Session, c: Context): Runs => {
  const lacking: { step: string; piece: string }[] = []
  const switchedOff: string[] = []
  const ran: RunStep[] = []
  for (const rule of catalogue) {
    const gone = notOffered(rule, c)
    // What is not offered is said, also where its being gone is why more is refused.
    const stops = refusalsOf(rule.id).filter((x) => !gone || !unguarded.includes(x))
    const run = runStep(rule, stops, told, c)
    if (run.chance <= 0) continue
    const missing = rule.kit.find((piece) => !owns(c, piece))
    if (c.settings.steps[rule.id]?.off) switchedOff.push(rule.id)
    else if (missing !== undefined) lacking.push({ step: rule.id, piece: missing })
    else ran.push(run)
  }
  return {
    steps: ran,
    events: events.map((e) => runEvent(e, told, c)).filter((e) => e.chance > 0),
    lacking,
    switchedOff,
  }
}
