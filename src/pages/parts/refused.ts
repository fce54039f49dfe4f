import { type FieldError, type Kept, keptOne } from '../frame'

/** What stopped a form, and what was typed into it. Empty: nothing was refused. */
export type Refused = { readonly errors?: readonly FieldError[]; readonly kept?: Kept }

/** Of a page with many forms, the refusal for the one with these hidden fields; none for the others. */
export const refusedForm = (p: Refused, marks: Readonly<Record<string, string>>): Refused =>
  p.errors?.length && Object.entries(marks).every(([name, v]) => keptOne(p.kept, name) === v)
    ? { errors: p.errors, ...(p.kept ? { kept: p.kept } : {}) }
    : {}

/** A field as it was typed, with its fault. */
export const typed = (r: Refused, name: string, otherwise = '') => ({
  value: keptOne(r.kept, name, otherwise),
  ...(r.errors ? { errors: r.errors } : {}),
})

export const isRefused = (r: Refused): boolean => r.errors !== undefined
