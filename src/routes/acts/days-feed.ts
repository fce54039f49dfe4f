import { type CalendarEvent, calendarFile } from '../../words/calendar-file'
import type { Studio } from '../route'
import { type DatedCar, jobsNow } from './days'

/**
 * The studio's days as a calendar file: for each dated car its coming, each day's work from the first
 * to the last minute, and the day it is ready. Cars by reference and make-up only: no names, no
 * numbers. As they stand now, so that a late car shows where its days went.
 */
export const studioFeed = (
  cars: readonly DatedCar[],
  studio: Studio,
  now: number,
  origin: string,
): string => {
  const { words } = studio
  const jobs = jobsNow(cars, studio, now)
  const events = cars.flatMap((car): readonly CalendarEvent[] => {
    const { docket, reference, title, rev } = car.head
    const job = jobs.find((j) => j.job === docket)
    const name = `${reference ?? ''} ${title}`.trim()
    const url = `${origin}/studio/d/${docket}`
    const shared = { sequence: rev, stampedAt: car.head.updatedAt, description: url, url }
    const event = (
      part: string,
      key: string,
      date: string,
      span?: { readonly from: number; readonly to: number },
    ): CalendarEvent => ({
      ...shared,
      uid: `${docket}-${part}@jambside`,
      summary: words.say(key, { car: name }),
      date,
      ...(span ? { minute: span.from, lastsMinutes: Math.max(1, span.to - span.from) } : {}),
    })
    if (!job) return car.head.jobDate ? [event('comes', 'feed.comes', car.head.jobDate)] : []
    const days = [...new Set(job.taken.work.map((w) => w.date))]
    const comes =
      car.job?.stage === 'waiting'
        ? [
            event(
              'comes',
              'feed.comes',
              job.start,
              job.startMinute > 0 ? { from: job.startMinute, to: job.startMinute + 30 } : undefined,
            ),
          ]
        : []
    return [
      ...comes,
      ...days.map((date) => {
        const work = job.taken.work.filter((w) => w.date === date)
        return event(`work-${date}`, 'feed.work', date, {
          from: Math.min(...work.map((w) => w.from)),
          to: Math.max(...work.map((w) => w.to)),
        })
      }),
      event('ready', 'feed.ready', job.ready.date),
    ]
  })
  return calendarFile(events, studio.engine.zone)
}
