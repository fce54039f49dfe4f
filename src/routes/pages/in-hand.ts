import { SUPPLY, WANTED } from '../../jobsheet/in-hand'
import { parseDate } from '../../kernel/calendar'
import { paths } from '../../pages/paths'
import { type InHandGiven, keepInHand } from '../acts/in-hand'
import { type Fault, invalid } from '../http/problem'
import { type Form, type Route, route } from '../route'
import { docketForm, inForce, load } from './docket-render'
import { madeFor } from './docket-view'
import { seeOther, textOf, typedIn } from './page'

const dayIn = (form: Form, name: string, faults: Fault[]): string | undefined => {
  const typed = typedIn(form, name)
  if (typed === undefined || parseDate(typed).ok) return typed
  faults.push({ pointer: `/${name}`, code: 'ERR_DATE' })
  return undefined
}

/** How far each thing is and what else is wanted, as typed. Throws 422 with each fault by its field. */
const inHandOfForm = (form: Form): InHandGiven => {
  const faults: Fault[] = []
  const supply = form.entries.flatMap(([name, typed]) => {
    if (!name.startsWith('state:')) return []
    const item = name.slice('state:'.length)
    const state = SUPPLY.find((s) => s === typed)
    const expected = dayIn(form, `expected:${item}`, faults)
    if (!state) faults.push({ pointer: `/${name}`, code: 'ERR_VALUE' })
    return state ? [{ item, state, ...(expected ? { expected } : {}) }] : []
  })
  const thing = textOf(form, 'thing', 120)
  const what = WANTED.find((w) => w === form.get('what'))
  const orderBy = dayIn(form, 'orderBy', faults)
  if (thing !== undefined && !what) faults.push({ pointer: '/what', code: 'ERR_VALUE' })
  if (faults.length > 0) throw invalid(faults)
  return {
    supply,
    ...(thing !== undefined && what
      ? { wanted: { what, thing, ...(orderBy ? { orderBy } : {}) } }
      : {}),
  }
}

export const inHandRoutes: readonly Route[] = [
  route({
    id: 'page.docket.in-hand',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/in-hand',
    rights: 'bench',
    summary: 'How far each thing is that the car waits for, and what else is wanted.',
    body: 'form',
    answers: { 303: null },
    load,
    act: docketForm((call, desk, form) => {
      const steps = madeFor(call, desk, inForce(desk))?.steps ?? []
      const { writes } = keepInHand(call, desk, steps, inHandOfForm(form))
      return seeOther(`${paths.docket(desk.id)}#in-hand`, { writes })
    }),
  }),
]
