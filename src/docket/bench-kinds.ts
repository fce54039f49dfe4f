import * as z from 'zod'
import { REMOVED_SORTS } from '../jobsheet/refit'
import { supplied, wanted } from './in-hand-kinds'
import { type BenchKind, GOES_BEFORE, HEARD, LOCKING_KEYS, PROBES, RECORDED } from './kind-names'
import { id, maybe, micrometres, minutes, moment, text, words } from './line-shapes'

/** Lines a bench device may write without a signal; they fold the same in any order of arrival. */
export const benchKinds = {
  'checked-in': z.strictObject({
    mileage: maybe(z.int().min(0)),
    fuel: maybe(z.string().max(40)),
    keys: maybe(z.int().min(0).max(20)),
    name: maybe(text),
    notes: maybe(text),
    consents: z.array(z.enum(['drive', 'photos', 'stickers'])).max(3),
    /** The key that undoes the locking wheel nuts. */
    lockingKey: maybe(z.enum(LOCKING_KEYS)),
    /** Lamps that are lit in the dashboard. */
    warnings: maybe(text),
    /** Things of the owner's that stay in the car. */
    valuables: maybe(text),
  }),
  began: z.strictObject({ step: words }),
  'broke-off': z.strictObject({ step: words, why: maybe(text) }),
  done: z.strictObject({
    step: words,
    minutes: maybe(minutes),
    entered: maybe(z.boolean()),
  }),
  reading: z.strictObject({
    panel: words,
    kind: z.enum(['panel', 'reference']),
    values: z.array(micrometres).min(1).max(50),
    probe: maybe(z.enum(PROBES)),
    overFilm: maybe(z.boolean()),
    when: maybe(z.enum(['before', 'after'])),
    spot: maybe(z.string().max(40)),
  }),
  unreadable: z.strictObject({ panel: words, why: z.string().max(200) }),
  polished: z.strictObject({
    panel: words,
    sequence: words,
    sets: z.int().min(1).max(40),
    machine: maybe(z.string().max(80)),
    pad: maybe(z.string().max(80)),
    abrasive: maybe(z.string().max(80)),
    speed: maybe(z.string().max(40)),
  }),
  /** The owner's word that more than the allowance may come off a panel, and why. */
  allowed: z.strictObject({
    panel: words,
    sequence: words,
    why: text,
    name: maybe(text),
    how: maybe(z.enum(HEARD)),
  }),
  found: z.strictObject({
    place: z.string().min(1).max(80),
    text,
    photo: maybe(id),
    /** What kind of thing it is; says what to do and what it usually adds. */
    suggests: maybe(words),
    panel: maybe(words),
    /** Seen when the car came, before anybody worked on it. */
    arrival: maybe(z.literal(true)),
  }),
  removed: z.strictObject({
    item: z.string().min(1).max(80),
    place: z.string().max(80),
    thickness: maybe(z.string().max(40)),
    stored: maybe(z.string().max(80)),
    photo: maybe(id),
    /** What kind of part it is; says which checks it raises. */
    sort: maybe(z.enum(REMOVED_SORTS)),
    /** It must be back on before this goes back on. */
    before: maybe(z.enum(GOES_BEFORE)),
  }),
  refitted: z.strictObject({ removal: id }),
  checked: z.strictObject({ check: words, waived: maybe(z.boolean()), why: maybe(text) }),
  struck: z.strictObject({ line: id, why: z.string().min(1).max(300) }),
  noted: z.strictObject({ text }),
  wanted,
  supplied,
  /** The gauge on shims of known thickness, µm. */
  'gauge-checked': z.strictObject({
    shims: z
      .array(z.strictObject({ nominal: micrometres, read: micrometres }))
      .min(1)
      .max(12),
    probe: maybe(z.enum(PROBES)),
  }),
  /** A contact or waiting time by the label, begun at the line's own time. */
  'timer-set': z.strictObject({
    step: words,
    minutes: z.int().min(1).max(10_080),
    what: maybe(z.string().max(80)),
  }),
  /** What the owner said when film began to take paint with it. */
  'film-answered': z.strictObject({
    go: z.enum(['leave', 'go-on']),
    why: text,
    name: maybe(text),
    how: maybe(z.enum(HEARD)),
  }),
  /** Who is there from now on; the plan of what is left follows from it. */
  'crew-changed': z.strictObject({
    people: z.int().min(0).max(6),
    noLifting: maybe(z.literal(true)),
    why: maybe(text),
    readyLikely: maybe(moment),
    readyCautious: maybe(moment),
  }),
  /** The end of a day with the car still here. */
  'stayed-overnight': z.strictObject({
    go: z.enum(['carry-on', 'tell-owner']),
    where: z.string().min(1).max(80),
    keys: z.string().min(1).max(80),
    shut: z.boolean(),
    text: maybe(text),
  }),
  /** What the record of the job keeps besides: batch, light, air. */
  recorded: z.strictObject({ what: z.enum(RECORDED), value: z.string().min(1).max(120) }),
} as const satisfies Readonly<Record<BenchKind, z.ZodType>>
