/** What each person is booked for, in working minutes, and machine minutes by day index. */
export type Board = {
  readonly from: number[][]
  readonly to: number[][]
  readonly machine: number[][]
}

/** A board for a number of people, all free. */
export const makeBoard = (people: number): Board => {
  const seats = Array.from({ length: people }, (_, person) => person)
  return { from: seats.map(() => []), to: seats.map(() => []), machine: seats.map(() => []) }
}

/** Until when a person stays free from `at` on; `at` itself when busy. */
export const freeUntil = (board: Board, person: number, at: number): number => {
  const from = board.from[person]!
  const to = board.to[person]!
  for (let k = from.length - 1; k >= 0; k--) {
    if (to[k]! <= at) return from[k + 1] ?? Number.POSITIVE_INFINITY
    if (from[k]! <= at) return at
  }
  return from[0] ?? Number.POSITIVE_INFINITY
}

/** Books [start, end); stretches that touch become one, so that searches step over them at once. */
export const occupy = (board: Board, person: number, start: number, end: number) => {
  const from = board.from[person]!
  const to = board.to[person]!
  let k = from.length
  while (k > 0 && from[k - 1]! > start) k--
  const joinsBefore = k > 0 && to[k - 1] === start
  const joinsAfter = k < from.length && from[k] === end
  if (joinsBefore && joinsAfter) {
    to[k - 1] = to[k]!
    from.splice(k, 1)
    to.splice(k, 1)
  } else if (joinsBefore) to[k - 1] = end
  else if (joinsAfter) from[k] = start
  else {
    from.splice(k, 0, start)
    to.splice(k, 0, end)
  }
}

/** The next moment after `at` when somebody becomes free, or the day ends. */
export const nextChange = (board: Board, at: number, dayEnd: number): number => {
  let next = dayEnd
  for (const to of board.to) {
    for (let k = to.length - 1; k >= 0 && to[k]! > at; k--) if (to[k]! < next) next = to[k]!
  }
  return next
}
