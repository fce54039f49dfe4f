import { DEFAULT_RETENTION, type Due, dueAt } from '../../docket/retention'
import { type Db, readAll } from '../../store/db'
import { eraseDocket } from '../../store/erasing'
import { deleteExpiredKeys } from '../../store/idempotency'
import { deleteDelivered } from '../../store/outbox'
import { deleteOldRates } from '../../store/rates'
import { deleteEndedSessions } from '../../store/sessions'
import { selectSettings } from '../../store/settings'
import { deleteSpentAccesses, selectUnchanged } from '../../store/upkeep'
import type { Deps } from '../deps'
import { studioOf } from '../http/studio'
import { openDesk } from './desk'
import { eraseLoad, erasePictures, erasureOf } from './erasing'

const DAY = 86_400_000
/** Delivered messages and dead keys stay this long, so that somebody can still ask what became of them. */
const SPENT_MS = 30 * DAY
/** Dockets of one run; what is left comes in the next. */
const MOST = 20

const eraseOne = async (db: Db, deps: Deps, docket: string, due: Due): Promise<void> => {
  if (due.whole) await db.write(eraseDocket(docket))
  else {
    const load = eraseLoad(docket)
    const [lines, head, people, texts, photos, estimates] = await readAll(db, [
      load.lines,
      load.head,
      load.people,
      load.texts,
      load.photos,
      load.estimates,
    ])
    const desk = openDesk({ lines, head, people, texts, photos })
    await db.write(erasureOf(desk, estimates, deps.now()))
  }
  await erasePictures(deps.photos, docket)
}

/**
 * What happens by itself, about once an hour: personal data that has stayed as long as the studio
 * keeps it goes, and so does what has served its time. Gives the dockets that were erased. It may be
 * broken off anywhere and run twice at once: each docket is one batch.
 */
export const upkeep = async (deps: Deps): Promise<readonly string[]> => {
  const db = deps.openDb()
  const now = deps.now()
  try {
    const [settings] = await readAll(db, [selectSettings()])
    const { profile } = studioOf(settings[0], now, deps.catalogues)
    const due = dueAt(profile.retention ?? DEFAULT_RETENTION, now)
    const found = await readAll(
      db,
      due.map(({ states, before, whole }) =>
        selectUnchanged({ states, before, holding: !whole, limit: MOST }),
      ),
    )
    const erased: string[] = []
    for (const [i, each] of due.entries())
      for (const docket of found[i] ?? []) {
        await eraseOne(db, deps, docket, each)
        erased.push(docket)
      }
    await db.write([
      deleteOldRates(Math.floor(now / 60_000) - 1),
      deleteExpiredKeys(now),
      deleteEndedSessions(now),
      deleteDelivered(now - SPENT_MS),
      deleteSpentAccesses(now - SPENT_MS),
    ])
    if (erased.length > 0) await db.scrub?.()
    return erased
  } finally {
    await db.close()
  }
}

/** Runs {@link upkeep} and says in the log how many were erased; a failure is logged and tried again later. */
export const tend = async (deps: Deps, requestId: string): Promise<void> => {
  const record = { requestId, route: 'upkeep', method: 'RUN' } as const
  try {
    const erased = await upkeep(deps)
    deps.log({ ...record, status: 200, count: erased.length })
  } catch (error) {
    deps.fault(requestId, error)
    deps.log({ ...record, status: 503, count: 0 })
  }
}
