import { type CalendarEvent, calendarFile } from '../../words/calendar-file'
import { Problem } from '../http/problem'
import type { Call, Load, Studio } from '../route'
import type { Desk } from './desk'
import { looksAgain } from './telling-after'

type Any = Call<unknown, unknown, Load>

/** States of a job in which its day means something to the owner of the car. */
const DATED = new Set(['dated', 'on-bench', 'held', 'finished', 'part-done', 'uncollected'])

const OFF = new Set<string>(['called-off', 'withdrawn'])

/** What the owner may know of the day: when, where it stands, why it waits, and what was said after. */
export const dayView = (studio: Studio, desk: Desk) => {
  const { docket, texts } = desk
  const { words } = studio
  const why = docket.state === 'held' && docket.whyMoved ? texts.get(docket.whyMoved) : undefined
  const done = Object.values(docket.bench.steps).filter(
    (s) => s.state === 'done' && words.has(`step.${s.step}`),
  )
  return {
    state: docket.state,
    rev: docket.rev,
    dated:
      docket.dated && DATED.has(docket.state)
        ? {
            start: docket.dated.start,
            ...(docket.dated.startMinute === undefined
              ? {}
              : { startMinute: docket.dated.startMinute }),
            readyLikely: docket.dated.readyLikely.slice(0, 10),
            readyCautious: docket.dated.readyCautious.slice(0, 10),
          }
        : null,
    why: why ?? null,
    /** Extra work, or a smaller result, that waits for a yes or a no. */
    waiting:
      docket.extras.filter((e) => e.decision === null).length +
      docket.reIssues.filter((r) => r.decision === null).length,
    done: done
      .sort((a, b) => a.lastAt - b.lastAt)
      .map((s) => ({ step: s.step, text: words.say(`step.${s.step}`) })),
    lookAgain: looksAgain(studio, desk),
    told: docket.toldAfter.map((t) => ({
      well: t.well,
      day: t.day,
      at: new Date(t.at).toISOString(),
      text: t.text ? (texts.get(t.text.text) ?? null) : null,
    })),
  }
}

/**
 * The day as a calendar file: bringing the car, and the day it is ready to be safe. One that was
 * called off is taken back under the same names. Throws 404 where no day was ever fixed.
 */
export const dayFile = (call: Pick<Any, 'studio' | 'origin'>, desk: Desk): string => {
  const { dated, state, reference } = desk.docket
  if (!dated) throw new Problem('unknown')
  const { words, profile, engine } = call.studio
  const off = OFF.has(state)
  // Each new day and each calling off is one change of the same events.
  const changes = desk.lines.filter(
    (l) => l.kind === 'dated' || (l.kind === 'moved' && OFF.has((l.body as { to: string }).to)),
  ).length
  const url = `${call.origin}/e/${desk.id}/day`
  const shared = {
    sequence: changes - 1,
    stampedAt: off ? desk.docket.changedAt : dated.at,
    url,
    description: `${words.say('calendar.about', { reference: reference ?? '' })}\n${url}`,
  }
  const events: readonly CalendarEvent[] = [
    {
      ...shared,
      uid: `${desk.id}-bring@jambside`,
      summary: words.say('calendar.bring', { studio: profile.name }),
      date: dated.start,
      ...(dated.startMinute === undefined ? {} : { minute: dated.startMinute }),
    },
    {
      ...shared,
      uid: `${desk.id}-ready@jambside`,
      summary: words.say('calendar.ready', { studio: profile.name }),
      date: dated.readyCautious.slice(0, 10),
    },
  ]
  return calendarFile(events, engine.zone, off)
}
