export const STATES = [
  'answering',
  'received',
  'look-over',
  'quoted',
  'agreed',
  'declined',
  'lapsed',
  'withdrawn',
  'turned-down',
  'dated',
  'on-bench',
  'held',
  'finished',
  'handed-over',
  'called-off',
  'not-brought',
  'part-done',
  'uncollected',
  'come-back',
] as const
export type State = (typeof STATES)[number]

/** `apart` holds enquiries that may not be from a person, until somebody says that they are. */
export const TURNS = ['ours', 'theirs', 'bay', 'closed', 'apart'] as const
export type Turn = (typeof TURNS)[number]

/** Every legal move; a move that is not here is answered with those that are. */
export const MOVES: Readonly<Record<State, readonly State[]>> = {
  answering: ['received', 'withdrawn', 'lapsed'],
  received: ['look-over', 'quoted', 'turned-down', 'withdrawn', 'lapsed'],
  'look-over': ['quoted', 'turned-down', 'withdrawn', 'lapsed'],
  quoted: ['quoted', 'agreed', 'declined', 'lapsed', 'withdrawn', 'turned-down'],
  agreed: ['dated', 'quoted', 'called-off', 'withdrawn'],
  declined: ['received', 'quoted'],
  lapsed: ['received', 'quoted'],
  withdrawn: [],
  'turned-down': ['received'],
  dated: ['dated', 'on-bench', 'called-off', 'not-brought'],
  'on-bench': ['held', 'finished', 'part-done'],
  held: ['on-bench', 'part-done'],
  finished: ['handed-over', 'uncollected', 'on-bench'],
  'handed-over': ['come-back'],
  'called-off': ['received', 'dated'],
  'not-brought': ['dated', 'called-off'],
  'part-done': ['handed-over', 'dated', 'on-bench', 'uncollected'],
  uncollected: ['handed-over'],
  'come-back': ['dated', 'on-bench', 'handed-over'],
}

export const mayMove = (from: State, to: State): boolean => MOVES[from].includes(to)

const TURN: Readonly<Record<State, Turn>> = {
  answering: 'theirs',
  received: 'ours',
  'look-over': 'theirs',
  quoted: 'theirs',
  agreed: 'ours',
  declined: 'closed',
  lapsed: 'closed',
  withdrawn: 'closed',
  'turned-down': 'closed',
  dated: 'bay',
  'on-bench': 'bay',
  held: 'bay',
  finished: 'bay',
  'handed-over': 'closed',
  'called-off': 'closed',
  'not-brought': 'ours',
  'part-done': 'ours',
  uncollected: 'ours',
  'come-back': 'ours',
}

/**
 * Whose turn it is, doubtful enquiries apart; an unanswered question of the owner's (or an answer we asked for again) makes it
 * ours whatever the state, and one we still wait for makes it theirs.
 */
export const turnOf = (state: State, asked: boolean, waiting = false, doubtful = false): Turn => {
  if (doubtful && state === 'received') return 'apart'
  if (asked) return TURN[state] === 'theirs' || state === 'handed-over' ? 'ours' : TURN[state]
  return waiting && state === 'received' ? 'theirs' : TURN[state]
}

/** Answers may still be changed by the owner of the car. */
export const isOpenToAnswers = (state: State): boolean => state === 'answering'
