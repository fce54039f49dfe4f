import type { Reader } from './reader'

export const KINDS = [
  'choice',
  'multi',
  'yesNo',
  'number',
  'year',
  'date',
  'money',
  'text',
  'vin',
  'photos',
  'contact',
] as const
export type Kind = (typeof KINDS)[number]

/** `first` must be answered before a range can be given; `narrow` only makes the range narrower. */
export const STAGES = ['first', 'narrow', 'send'] as const
export type Stage = (typeof STAGES)[number]

export const TOPICS = [
  'car',
  'paint',
  'film',
  'water',
  'cabin',
  'use',
  'wheels',
  'wish',
  'send',
] as const
export type Topic = (typeof TOPICS)[number]

/** A sentence by key; numbers and lists are rendered by the catalogue of words. */
export type Phrase = {
  readonly key: string
  readonly params?: Readonly<Record<string, string | number | readonly string[]>>
}

export type Contact = { readonly name: string; readonly email?: string; readonly phone?: string }

/** How likely each value is when the owner does not know it; weights sum to 1. */
export type Likely<T> = readonly (readonly [value: T, weight: number])[]

/**
 * One question of the script. `asked` may read earlier questions only; `likely` is what an unsure
 * answer is mixed over (absent: an unsure answer changes no figure); `carSd` is what not knowing
 * adds to the spread of the whole car (sd of the log factor).
 */
export type Question<T = unknown> = {
  readonly id: string
  readonly topic: Topic
  readonly stage: Stage
  readonly kind: Kind
  readonly options?: readonly string[]
  /** Choosing this option of a multi excludes the others (besides the empty list). */
  readonly alone?: readonly string[]
  readonly unit?: string
  readonly units?: readonly string[]
  readonly min?: number
  readonly max?: number
  readonly unsureAllowed: boolean
  readonly optional: boolean
  readonly likely?: Likely<T>
  readonly likelySource?: string
  readonly carSd?: number
  /** Asks about two answers that do not go together: never left out because the conversation is long. */
  readonly check?: true
  readonly asked: (r: Reader) => boolean
  readonly reply: (r: Reader) => Phrase
}

type Given<T> = Pick<Question<T>, 'id' | 'topic' | 'stage' | 'kind'> & Partial<Question<T>>

/** Defines a question; the type argument is the type of its parsed value. */
export const question = <T>(q: Given<T>): Question<T> => ({
  unsureAllowed: false,
  optional: false,
  asked: () => true,
  reply: () => ({ key: `reply.${q.id}` }),
  ...q,
})
