import { fold, type Revision } from '../../docket/fold'
import type { Adjustment } from '../../docket/kinds'
import { estimate } from '../../quote/estimate'
import { adjustmentKey, mergeAdjustments } from '../../quote/merge-adjustments'
import { optionInputs } from '../../quote/options/option'
import type { Stmt } from '../../store/db'
import { adjustmentText } from '../acts/adjustment-text'
import type { Desk } from '../acts/desk'
import { deskInput } from '../acts/estimating'
import { optionLine } from '../acts/option-views'
import { send } from '../acts/revising'
import { checkOptions } from '../acts/revising-options'
import { trialView } from '../acts/trial-view'
import { Problem } from '../http/problem'
import type { Outcome } from '../route'
import { docketPage, inForce, messageView, staleView } from './docket-render'
import type { optionsOf } from './options-form'
import { type Any, formOf, keptOf } from './page'

/** Names for work the studio adds: never used before on this docket, one after the other. */
export const stepNames = (desk: Desk): (() => string) => {
  const used = new Set(
    desk.docket.revisions.flatMap((r) =>
      r.adjustments.flatMap((a) => (a.kind === 'add' || a.kind === 'sublet' ? [a.step] : [])),
    ),
  )
  let n = used.size
  return () => {
    do n += 1
    while (used.has(`own-${n}`))
    return `own-${n}`
  }
}

/** Own lines have no fields of their own on the form: they stay until they are left out. */
export const withOwn = (
  before: readonly Adjustment[],
  posted: readonly Adjustment[],
): readonly Adjustment[] => {
  const gone = (step: string): boolean => posted.some((b) => b.kind === 'remove' && b.step === step)
  const own = before.filter((a) => a.kind === 'add' || a.kind === 'sublet')
  const names = new Set(own.map((a) => a.step))
  return [
    ...own.filter((a) => !gone(a.step)),
    ...posted.filter((a) => !(a.kind === 'remove' && names.has(a.step))),
  ]
}

/** Tries changes without keeping anything: the page with before and after side by side. */
export const tried = (
  call: Any,
  desk: Desk,
  all: readonly Adjustment[],
  deposit: number | undefined,
  { options, optionAt }: ReturnType<typeof optionsOf>,
): Outcome => {
  const made = (adjustments: readonly Adjustment[]) =>
    estimate(deskInput(call.studio, call.now, desk, adjustments))
  const after = made(all)
  const asked = deposit === undefined ? after : { ...after, offer: { ...after.offer, deposit } }
  const ways = optionInputs(deskInput(call.studio, call.now, desk, all), options, () => '-').map(
    (o) => ({ ...o, made: estimate(o.input) }),
  )
  checkOptions(ways, optionAt)
  const { words } = call.studio
  const trial = {
    ...trialView(made(inForce(desk)), asked, words),
    options: ways.map(({ letter, given, made: { offer } }) => {
      const { panels, treatment } = given
      const named = panels?.length ? { panels: [...panels] } : {}
      return optionLine({ option: letter, treatment, ...named, offer }, words)
    }),
  }
  return docketPage(call, desk, all, { trial, kept: keptOf(formOf(call)) })
}

/** The docket as the writer of a form saw it. */
const asSeen = (desk: Desk, rev: number): Desk => {
  const lines = desk.lines.filter((l) => l.seq <= rev)
  return { ...desk, lines, docket: fold(lines) }
}

/** Two wrote at once: the page with both changes in the form, what was written, and what both changed. */
export const merged = (
  call: Any,
  desk: Desk,
  posted: (state: Desk) => readonly Adjustment[],
  problem: Problem,
): Outcome => {
  const form = formOf(call)
  const seen = asSeen(desk, Number(form.get('rev') ?? 0))
  const found = mergeAdjustments(inForce(seen), inForce(desk), posted(seen))
  const { words } = call.studio
  const theirs = inForce(desk)
  const both = found.both.map((key) => {
    const was = theirs.find((a) => adjustmentKey(a) === key)
    return was ? adjustmentText(was, words) : key
  })
  const typed = keptOf(form)
  const alone = [
    'message',
    'deposit',
    'valid-days',
    'add-name',
    'add-minutes',
    'add-price',
    'add-why',
    'own-work',
    'sublet-name',
    'sublet-price',
    'sublet-why',
  ]
  const ways = Object.keys(typed).filter((name) => name.startsWith('option-'))
  const kept = Object.fromEntries(
    [...alone, ...ways].flatMap((name) => (typed[name] ? [[name, typed[name]]] : [])),
  )
  return docketPage(call, desk, found.merged, { stale: staleView(problem, both), kept }, 412)
}

/** Sends a revision and shows the link with the message to paste. */
export const sentPage = async (
  call: Any,
  desk: Desk,
  before: readonly Stmt[],
  revision: Revision | undefined = desk.docket.revisions.at(-1),
): Promise<Outcome> => {
  if (!revision) throw new Problem('unknown')
  const done = await send(before.length > 0 ? { ...call, match: null } : call, desk, revision)
  const now = { ...desk, docket: done.docket }
  const message = messageView(call, desk, done.message)
  return {
    ...docketPage(call, now, inForce(now), { message }),
    writes: [...before, ...done.writes],
  }
}
