import { POLISH_LEVELS, type PolishLevel } from '../quote/context'

type Polishing = { readonly id: string; readonly places: readonly string[] }

/** How deep each polishing step goes. */
const LEVEL_OF: Readonly<Record<string, PolishLevel>> = {
  'glaze-hand': 'hand',
  'polish-hand': 'hand',
  'polish-finishing': 'finishing',
  'polish-light': 'light',
  'polish-cut': 'two-step',
}

const depth = (level: PolishLevel): number => POLISH_LEVELS.indexOf(level)

/** How deep each panel is polished by these steps; a panel no step names is not polished. */
export const levelsOf = (steps: readonly Polishing[]): ReadonlyMap<string, PolishLevel> => {
  const levels = new Map<string, PolishLevel>()
  for (const { id, places } of steps) {
    const level = LEVEL_OF[id]
    if (level === undefined) continue
    for (const panel of places)
      if (depth(level) > depth(levels.get(panel) ?? 'none')) levels.set(panel, level)
  }
  return levels
}

export type Shrunk = {
  readonly panel: string
  readonly promised: PolishLevel
  readonly now: PolishLevel
}

/** Panels that cannot be polished as deep as was agreed, in the order of the agreed work. */
export const shrunkPanels = (
  agreed: readonly Polishing[],
  now: readonly Polishing[],
): readonly Shrunk[] => {
  const can = levelsOf(now)
  return [...levelsOf(agreed)].flatMap(([panel, promised]) => {
    const left = can.get(panel) ?? 'none'
    return depth(left) < depth(promised) ? [{ panel, promised, now: left }] : []
  })
}
