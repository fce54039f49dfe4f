import type { Answers } from '../../src/intake/answers'
import { script } from '../../src/intake/script'
import type { Estimated } from '../../src/quote/estimate'
import { COVERS } from '../../src/quote/risks/covers'
import { MOST_NOTES } from '../../src/quote/risks/pick-notes'
import { answerWith, levelsOf } from '../corpus/levels'
import type { Draw } from '../corpus/random'
import { estimateOf } from './studio'

type Line = { readonly because: readonly string[]; readonly text: string }

/** Every line that gives its reasons, by a name of its own. */
const linesOf = (e: Estimated): ReadonlyMap<string, Line> => {
  const lists = {
    step: e.steps,
    add: e.couldAdd,
    note: e.riskNotes,
    open: e.openPoints,
    refuse: e.scope.turnedDown,
  }
  return new Map(
    Object.entries(lists).flatMap(([list, lines]) =>
      lines.map((line) => [
        `${list}.${line.id}`,
        { because: line.because, text: JSON.stringify(line) },
      ]),
    ),
  )
}

/** The same answers with one of them changed to another level; undefined when none can be. */
const changeOne = (answers: Answers, draw: Draw): readonly [string, Answers] | undefined => {
  const asked = script.questions.filter((q) => q.id in answers && levelsOf(q).length > 1)
  const q = asked[draw(asked.length)]
  if (q === undefined) return undefined
  const levels = levelsOf(q)
  const old = answers[q.id]
  const at = draw(levels.length)
  const other = answerWith(q, levels[at] ?? 'unsure', draw)
  if (JSON.stringify(other) === JSON.stringify(old)) return undefined
  return [q.id, { ...answers, [q.id]: other }]
}

/** A note may go because another says more than it, or because the list is full: no reason of its own. */
const madeRoom = (id: string, e: Estimated): boolean =>
  e.riskNotes.length >= MOST_NOTES || e.riskNotes.some((n) => COVERS[n.id]?.includes(id) === true)

/** Lines that moved although the changed answer is not among their reasons. */
export const becauseFaults = (answers: Answers, draw: Draw): readonly string[] => {
  const changed = changeOne(answers, draw)
  if (changed === undefined) return []
  const [q, others] = changed
  const before = linesOf(estimateOf(answers))
  const changedTo = estimateOf(others)
  const after = linesOf(changedTo)
  return [...before].flatMap(([name, { because, text }]) => {
    if (because.includes(q)) return []
    const now = after.get(name)
    if (now?.text === text) return []
    const [list, id] = name.split('.')
    if (now === undefined && list === 'note' && madeRoom(id ?? '', changedTo)) return []
    return [
      `${name} changed with ${q}: ${text.slice(0, 400)} -> ${now?.text.slice(0, 400) ?? 'gone'}`,
    ]
  })
}
