import { addresses } from '../../pages/bench/addresses'
import type { Carried } from '../../pages/bench/carried'
import { type Database, type KeptWords, keepSheet } from './store'

const GIVE_UP_MS = 10_000

const json = async <T>(url: string): Promise<T | null> => {
  try {
    const response = await fetch(url, { signal: AbortSignal.timeout(GIVE_UP_MS) })
    const isJson = (response.headers.get('content-type') ?? '').startsWith('application/json')
    return response.ok && isJson ? ((await response.json()) as T) : null
  } catch {
    return null
  }
}

/** Brings a sheet from the studio, and its words where they are new. False: it could not be had. */
export const bring = async (
  db: Database,
  docket: string,
  left: () => boolean,
): Promise<boolean> => {
  type Brought = { readonly carried: Carried; readonly words: string }
  const brought = await json<Brought>(addresses.carried(docket))
  if (brought === null || left()) return false
  if ((await db.get('words', brought.words)) === undefined) {
    const words = await json<KeptWords>(addresses.words)
    if (words === null || words.tag !== brought.words || left()) return false
    await db.put('words', words)
  }
  await keepSheet(db, { ...brought, broughtAt: Date.now() })
  return true
}
