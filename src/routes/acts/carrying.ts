import { beforeOf } from '../../jobsheet/before'
import { type Carried, isOfSheet } from '../../pages/bench/carried'
import { noteWords } from '../../pages/bench/sheet-words'
import { paintCaseOf } from '../../quote/paint-of'
import type { Studio } from '../route'
import { agreedWork, type StoredEstimates } from './agreed'
import type { Desk } from './desk'
import { benchFacts } from './facts'

/** Every id under the name `text` in a line's body. */
const textsOf = (body: unknown): readonly string[] => {
  if (body === null || typeof body !== 'object') return []
  return Object.values(body).flatMap((value) =>
    value !== null && typeof value === 'object' && typeof value.text === 'string'
      ? [value.text]
      : [],
  )
}

const agreedOnExtras = ({
  extrasLimit,
  unanswered,
}: NonNullable<Desk['docket']['agreed']>): NonNullable<Carried['agreed']> => ({
  ...(extrasLimit === undefined ? {} : { extrasLimit }),
  ...(unanswered === undefined ? {} : { unanswered }),
})

/** What a device carries of an agreed job. Throws 409 while nothing was agreed. */
export const carriedOf = (
  desk: Desk,
  stored: StoredEstimates,
  studio: Studio,
  nowYear: number,
): Carried => {
  const { estimate } = agreedWork(desk, stored)
  const lines = desk.lines.filter(isOfSheet)
  const { limits } = studio.engine
  const { agreed } = desk.docket
  return {
    id: desk.id,
    reference: desk.docket.reference ?? '',
    car: desk.head?.title ?? '',
    rev: desk.docket.rev,
    steps: estimate.steps.map(({ reasons: _, ...step }) => step),
    before: beforeOf(estimate.steps),
    notes: estimate.riskNotes.map(({ reasons: _, ...note }) => note),
    couldAdd: estimate.couldAdd.map(({ id, minutes }) => ({ id, minutes })),
    zone: studio.engine.zone,
    words: noteWords(studio.words, estimate.riskNotes),
    paint: paintCaseOf(desk.answers, nowYear),
    ...(limits ? { limits } : {}),
    facts: benchFacts(desk, studio.words).map(({ prompt, answer }) => ({ prompt, answer })),
    ...(agreed ? { agreed: agreedOnExtras(agreed) } : {}),
    lines,
    texts: Object.fromEntries(
      lines.flatMap((l) => textsOf(l.body)).map((id) => [id, desk.texts.get(id) ?? '']),
    ),
  }
}
