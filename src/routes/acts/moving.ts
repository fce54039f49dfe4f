import { MOVES, mayMove, type State } from '../../docket/states'
import type { Stmt } from '../../store/db'
import { insertText } from '../../store/texts'
import { invalid } from '../http/problem'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, keepText, write } from './desk'
import { notNow } from './revising'

type Any = Call<unknown, unknown, Load>

/** Moves the studio makes by hand; the others follow from what is done (sending, dating, handing over). */
export const BY_HAND = [
  'look-over',
  'turned-down',
  'lapsed',
  'withdrawn',
  'received',
  'on-bench',
  'held',
  'finished',
  'part-done',
  'called-off',
  'not-brought',
  'uncollected',
  'come-back',
] as const satisfies readonly State[]

export const movesByHand = (state: State): readonly State[] =>
  MOVES[state].filter((to) => (BY_HAND as readonly State[]).includes(to))

export type MoveGiven = {
  /** Turning down: who else may help. */
  readonly turn?: string | undefined
  /** What the paid inspection takes and costs, as the customer pays it. */
  readonly lookOver?: { readonly minutes: number; readonly amount: number } | undefined
}

/** Moves a docket by hand. Throws 409 with the moves that are possible; turning down needs a reason. */
export const move = (
  call: Any,
  desk: Desk,
  to: State,
  why: string | undefined,
  more: MoveGiven = {},
) => {
  checkMatch(call, desk)
  const from = desk.docket.state
  if (!mayMove(from, to) || !(BY_HAND as readonly State[]).includes(to))
    throw notNow(desk.docket, MOVES[from])
  if (to === 'turned-down' && !why?.trim())
    throw invalid([{ pointer: '/why', code: 'ERR_REQUIRED' }])
  const texts: Stmt[] = []
  const body: {
    to: State
    why?: { text: string }
    turn?: { text: string }
    lookOver?: NonNullable<MoveGiven['lookOver']>
  } = { to }
  if (to === 'look-over' && more.lookOver) body.lookOver = more.lookOver
  if (to === 'turned-down' && more.turn?.trim()) {
    const { ref, row } = keepText(call, desk.id, 'move.turn', more.turn.trim())
    body.turn = ref
    texts.push(insertText(row))
  }
  if (why?.trim()) {
    const { ref, row } = keepText(call, desk.id, 'move.why', why.trim())
    body.why = ref
    texts.push(insertText(row))
  }
  const { writes, docket } = write(call, desk, [{ kind: 'moved', body }])
  return { docket, writes: [...writes, ...texts] }
}
