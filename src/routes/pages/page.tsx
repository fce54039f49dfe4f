import type { Child } from 'hono/jsx'
import { typedWhole } from '../../intake/typed-whole'
import { assetsOf } from '../../pages/assets'
import type { FieldError, Frame, Kept } from '../../pages/frame'
import { paths } from '../../pages/paths'
import { toHtml } from '../../pages/to-html'
import { sayFaults } from '../../words/say-faults'
import { invalid, Problem, tooLong } from '../http/problem'
import type { Call, Form, Load, Outcome } from '../route'

export type Any = Call<unknown, unknown, Load>

/** What stands around every page of this request. */
export const frameOf = (
  call: Pick<Any, 'studio' | 'deps' | 'who'>,
  more: Partial<Frame> = {},
): Frame => {
  const { words, profile } = call.studio
  const inStudio = call.who.kind === 'owner' || call.who.kind === 'bench'
  return {
    words,
    assets: assetsOf(call.deps.manifest),
    studioName: profile.name,
    ...(profile.logo ? { logo: profile.logo } : {}),
    ...(inStudio
      ? {
          home: paths.studio,
          nav: [
            { href: paths.studio, text: words.say('nav.dockets') },
            { href: paths.days, text: words.say('nav.days') },
            ...(call.who.kind === 'owner'
              ? [
                  { href: paths.outgoing, text: words.say('nav.to-send') },
                  { href: paths.settings, text: words.say('nav.settings') },
                  { href: paths.devices, text: words.say('nav.devices') },
                  { href: paths.site, text: words.say('nav.site') },
                ]
              : []),
          ],
        }
      : {}),
    ...more,
  }
}

export const page = (child: Child, status = 200): Outcome => ({ status, html: toHtml(child) })

export const seeOther = (to: string, more: Partial<Outcome> = {}): Outcome => ({
  ...more,
  status: 303,
  to,
})

/** A key for the forms of one page; the same answer sent twice from it counts once. */
export const onceOf = (call: Pick<Any, 'newId'>): string => call.newId()

export const formOf = (call: { readonly body: unknown }): Form => call.body as Form

/** What was typed, so that a refused form comes back as it was. */
export const keptOf = (form: Form): Kept => {
  // Without a prototype: a field may be called anything.
  const kept: Record<string, string[]> = Object.create(null)
  for (const [name, value] of form.entries) {
    const known = kept[name]
    if (known) known.push(value)
    else kept[name] = [value]
  }
  return kept
}

/** Faults beside the fields they belong to; `/value/phone` and `/phone` both stand beside `phone`, each note its own box. */
export const fieldErrors = (call: Any, problem: Problem): readonly FieldError[] =>
  sayFaults(problem.faults, call.studio.words).map(({ pointer, message }, i) => {
    const field = pointer.split('/').filter(Boolean).at(-1) ?? 'value'
    const note = problem.faults[i]?.params?.note
    return { field: note === undefined ? field : `${field}-${note}`, message }
  })

/** Runs an act; faults of the input (or what else is named) give the page again, not a problem page. */
export const orAgain = async (
  act: () => Promise<Outcome> | Outcome,
  again: (problem: Problem) => Promise<Outcome> | Outcome,
  codes: readonly string[] = ['invalid'],
): Promise<Outcome> => {
  try {
    return await act()
  } catch (error) {
    if (error instanceof Problem && codes.includes(error.code)) return again(error)
    throw error
  }
}

/** The revision a studio form was made from; a later one answers 412 as in the API. */
export const withRev = <C extends Any>(call: C, form: Form): C => {
  const rev = form.get('rev')
  return rev !== null && /^\d{1,9}$/.test(rev) ? { ...call, match: Number(rev) } : call
}

/** A number or a day as it was typed, to be read by its own rule; undefined for nothing. */
export const typedIn = (form: Form, name: string): string | undefined =>
  form.get(name)?.trim() || undefined

/** What was typed; undefined for nothing. Throws Problem 422 past `most` characters: nothing is cut off. */
export const textOf = (form: Form, name: string, most: number): string | undefined => {
  const typed = typedIn(form, name)
  if (typed === undefined) return undefined
  if (typed.length > most) throw invalid([tooLong(`/${name}`, typed, most)])
  return typed
}

/** A whole number as typed; undefined for nothing, NaN for what is none. */
export const wholeOf = (form: Form, name: string): number | undefined => typedWhole(form.get(name))
