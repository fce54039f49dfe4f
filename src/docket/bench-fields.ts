import { REMOVED_SORTS } from '../jobsheet/refit'
import { SUPPLY, WANTED } from '../jobsheet/supply'
import { GOES_BEFORE, HEARD, LOCKING_KEYS, RECORDED } from './kind-names'
import type { LineKind } from './kinds'

export type Field = {
  readonly name: string
  /** Must be given; a line without it says nothing. */
  readonly must?: true
  /** Longest text, in characters; without this and what follows: a whole number. */
  readonly text?: number
  /** Smallest and largest whole number. */
  readonly from?: number
  readonly to?: number
  /** One of these. */
  readonly of?: readonly string[]
  /** A day as YYYY-MM-DD. */
  readonly day?: true
  /** A tick: true where it is set; 'either' says false where it is not. */
  readonly tick?: 'set' | 'either'
}

const text = (name: string, most: number, must?: true): Field => ({
  name,
  text: most,
  ...(must ? { must } : {}),
})
const whole = (name: string, from: number, to: number, must?: true): Field => ({
  name,
  from,
  to,
  ...(must ? { must } : {}),
})

const oneOf = (name: string, of: readonly string[], must?: true): Field => ({
  name,
  of,
  ...(must ? { must } : {}),
})

/** Characters of what is typed into a line apart from it. */
export const MOST_TYPED = 4000
const id = (name: string): Field => text(name, 64, true)

/** The fields of each kind's form, as the line's body takes them (`kinds.ts`; a test holds them together). */
export const FIELDS: Readonly<Partial<Record<LineKind, readonly Field[]>>> = {
  'checked-in': [
    whole('mileage', 0, 999_999_999),
    text('fuel', 40),
    whole('keys', 0, 20),
    text('name', MOST_TYPED),
    text('notes', MOST_TYPED),
    oneOf('lockingKey', LOCKING_KEYS),
    text('warnings', MOST_TYPED),
    text('valuables', MOST_TYPED),
  ],
  began: [id('step')],
  'broke-off': [id('step')],
  done: [id('step'), whole('minutes', 0, 100_000)],
  unreadable: [id('panel'), text('why', 200, true)],
  polished: [
    id('panel'),
    id('sequence'),
    whole('sets', 1, 40, true),
    text('machine', 80),
    text('pad', 80),
    text('abrasive', 80),
    text('speed', 40),
  ],
  allowed: [
    id('panel'),
    id('sequence'),
    text('why', MOST_TYPED, true),
    text('name', 200, true),
    oneOf('how', HEARD, true),
  ],
  found: [
    text('place', 80, true),
    text('text', 2000, true),
    text('suggests', 64),
    text('panel', 64),
    { name: 'arrival', tick: 'set' },
  ],
  removed: [
    text('item', 80, true),
    text('place', 80, true),
    text('thickness', 40),
    text('stored', 80),
    oneOf('sort', REMOVED_SORTS),
    oneOf('before', GOES_BEFORE),
  ],
  refitted: [id('removal')],
  checked: [id('check'), text('why', MOST_TYPED)],
  noted: [text('text', MOST_TYPED, true)],
  'timer-set': [id('step'), whole('minutes', 1, 10_080, true), text('what', 80)],
  'film-answered': [
    oneOf('go', ['leave', 'go-on'], true),
    text('why', MOST_TYPED, true),
    text('name', 200, true),
    oneOf('how', HEARD, true),
  ],
  'crew-changed': [
    whole('people', 0, 6, true),
    { name: 'noLifting', tick: 'set' },
    text('why', MOST_TYPED),
  ],
  'stayed-overnight': [
    oneOf('go', ['carry-on', 'tell-owner'], true),
    text('where', 80, true),
    text('keys', 80, true),
    { name: 'shut', tick: 'either' },
    text('text', MOST_TYPED),
  ],
  recorded: [oneOf('what', RECORDED, true), text('value', 120, true)],
  wanted: [
    id('item'),
    oneOf('what', WANTED, true),
    text('thing', 120, true),
    { name: 'orderBy', day: true },
  ],
  supplied: [
    id('item'),
    oneOf('state', SUPPLY, true),
    text('thing', 120),
    { name: 'expected', day: true },
  ],
  struck: [id('line'), text('why', 300, true)],
}
