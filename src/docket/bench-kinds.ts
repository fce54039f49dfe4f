import * as z from 'zod'
import { supplied, wanted } from './in-hand'
import { id, maybe, micrometres, minutes, text, words } from './line-shapes'

export const PROBES = ['magnetic', 'eddy', 'dual', 'ultrasonic'] as const

/** Lines a bench device may write without a signal; they fold the same in any order of arrival. */
export const benchKinds = {
  'checked-in': z.strictObject({
    mileage: maybe(z.int().min(0)),
    fuel: maybe(z.string().max(40)),
    keys: maybe(z.int().min(0).max(20)),
    name: maybe(text),
    notes: maybe(text),
    consents: z.array(z.enum(['drive', 'photos', 'stickers'])).max(3),
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
  allowed: z.strictObject({ panel: words, sequence: words, why: text }),
  found: z.strictObject({
    place: z.string().min(1).max(80),
    text,
    photo: maybe(id),
    suggests: maybe(words),
  }),
  removed: z.strictObject({
    item: z.string().min(1).max(80),
    place: z.string().max(80),
    thickness: maybe(z.string().max(40)),
    stored: maybe(z.string().max(80)),
  }),
  refitted: z.strictObject({ removal: id }),
  checked: z.strictObject({ check: words, waived: maybe(z.boolean()), why: maybe(text) }),
  struck: z.strictObject({ line: id, why: z.string().min(1).max(300) }),
  noted: z.strictObject({ text }),
  wanted,
  supplied,
} as const
