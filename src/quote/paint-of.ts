import type { Answers } from '../intake/answers'
import { filmPlaces, hasFilm } from '../intake/facts/film'
import { finishSystem } from '../intake/facts/finish-system'
import { has } from '../intake/facts/has'
import { peeling, peels } from '../intake/facts/peeling'
import { body } from '../intake/questions/body'
import { dangers } from '../intake/questions/dangers'
import { defects } from '../intake/questions/defects'
import { freshPaintWeeks } from '../intake/questions/fresh-paint-weeks'
import { hardSoft } from '../intake/questions/hard-soft'
import { oneOwner } from '../intake/questions/one-owner'
import { paintHistory } from '../intake/questions/paint-history'
import { panelMaterial } from '../intake/questions/panel-material'
import { polishedBefore } from '../intake/questions/polished-before'
import { resprayPanels } from '../intake/questions/respray-panels'
import { size } from '../intake/questions/size'
import { use } from '../intake/questions/use'
import { wish } from '../intake/questions/wish'
import { year } from '../intake/questions/year'
import { type Reader, reader } from '../intake/reader'
import type { Measured, PolishLevel } from './context'
import {
  assessCar,
  type Defect,
  type Gauge,
  type PaintAssessment,
  type PaintInput,
  type PaintSet,
  type PanelFacts,
  type PanelSubstrate,
  type SequenceId,
} from './paint'
import { type PaintPrior, priorsFor } from './paint/priors'
import { type BodyPanel, type BodyStyle, bodyStyles, panelsOf } from './panels'

/** Where the places of the film and peeling questions lie among the panels. */
const PLACES: Readonly<Record<string, readonly string[]>> = {
  'bonnet-edge': ['bonnet'],
  wings: ['front-left', 'front-right', 'rear-left', 'rear-right'],
  doors: ['left-doors', 'right-doors'],
  sills: ['left-sill', 'right-sill'],
  rear: ['boot', 'rear-bumper'],
}

const covers = (places: readonly string[], p: BodyPanel): boolean =>
  places.some((at) => at === 'whole-car' || (PLACES[at] ?? [at]).includes(p.place))

const MARKS: Readonly<Record<string, Defect>> = {
  haze: { class: 'haze' },
  'wash-marks': { class: 'swirls' },
  scratches: { class: 'light' },
  'nail-scratch': { class: 'catches-nail', share: 0.3 },
}

const substrateOf = (r: Reader, p: BodyPanel): PanelSubstrate => {
  if (p.material === 'plastic') return 'plastic'
  const told = r.value(panelMaterial)
  if (told === 'plastic-composite') return 'composite'
  return told === 'aluminium' ? 'aluminium' : p.material
}

/** The panels of this car in walking order; an unknown kind of car counts as a saloon. */
export const carPanels = (r: Reader): readonly BodyPanel[] => {
  const told = r.value(body)
  const style = (bodyStyles as readonly string[]).includes(told ?? '') ? told : 'saloon'
  return panelsOf(style as BodyStyle, r.value(size) ?? 'mid')
}

const panelFacts = (r: Reader, panels: readonly BodyPanel[]): readonly PanelFacts[] => {
  const history = r.value(paintHistory)
  const sprayed = r.value(resprayPanels) ?? []
  const fresh = has(r, dangers, 'fresh-paint')
  const weeks = fresh ? r.value(freshPaintWeeks) : undefined
  const film = hasFilm(r) ? filmPlaces(r) : []
  const peel = peels(r) ? peeling(r) : []
  const through = has(r, defects, 'burn-through')
  const soft = r.value(hardSoft) === 'marks-easily'
  return panels.map((p): PanelFacts => {
    const again = history === 'all' || (sprayed as readonly string[]).includes(p.place)
    return {
      panel: p.id,
      substrate: substrateOf(r, p),
      refinish: again
        ? 'resprayed'
        : history === 'original' || history === 'part'
          ? 'original'
          : 'unknown',
      underFilm: covers(film, p),
      peel: peels(r) && (peel.length === 0 ? p.lie === 'horizontal' : covers(peel, p)),
      edgesThrough: through,
      isSill: p.sill,
      soft,
      ...(again && weeks !== undefined ? { refinishAge: weeks * 7 } : {}),
    }
  })
}

/** The paint of a car as the answers tell it: plain data, to which readings may be held anywhere. */
export type PaintCase = {
  readonly input: Omit<PaintInput, 'readings' | 'gauge' | 'done' | 'settings'>
  readonly because: readonly string[]
}

export type PaintOf = {
  readonly assessment: PaintAssessment
  readonly panels: readonly BodyPanel[]
  /** What was expected before anybody measured. */
  readonly priors: readonly PaintPrior[]
  readonly because: readonly string[]
}

const caseOf = (
  r: ReturnType<typeof reader>,
  panels: readonly BodyPanel[],
  nowYear: number,
): PaintCase => {
  const owners = r.value(oneOwner)
  const before = r.value(polishedBefore)
  const input: PaintCase['input'] = {
    car: {
      year: r.value(year) ?? null,
      nowYear,
      finish: finishSystem(r),
      ownersMany: owners === 'many' || before === 'several' || before === 'often-or-dealer',
      shown: r.value(use) === 'show',
      unknownHistory: r.unsettled(paintHistory),
    },
    panels: panelFacts(r, panels),
    ...(r.value(wish) === undefined ? {} : { wish: r.value(wish) }),
    defects: (r.value(defects) ?? []).flatMap((d) => MARKS[d] ?? []),
  }
  return { input, because: r.because() }
}

/** What the answers say of the paint; what is not settled counts as unknown. */
export const paintCaseOf = (answers: Answers, nowYear: number): PaintCase => {
  const r = reader(answers)
  return caseOf(r, carPanels(r), nowYear)
}

/**
 * The paint of the car from the answers and whatever was read on it. What is not settled counts as
 * unknown, which the paint model answers with care instead of an average.
 */
export const paintOf = (
  answers: Answers,
  nowYear: number,
  readings: readonly PaintSet[],
  gauge: Gauge,
  done: PaintInput['done'] = [],
  limits?: PaintInput['settings'],
): PaintOf => {
  const r = reader(answers)
  const panels = carPanels(r)
  const { input, because } = caseOf(r, panels, nowYear)
  const assessment = assessCar({
    ...input,
    readings,
    gauge,
    done,
    ...(limits ? { settings: limits } : {}),
  })
  const { year: made, finish } = input.car
  return { assessment, panels, priors: priorsFor(finish, made), because }
}

/** The kind of polishing a sequence amounts to. */
export const levelOf = (sequence: SequenceId | null): PolishLevel => {
  if (sequence === null) return 'none'
  if (sequence === 'hand-glaze' || sequence === 'hand-finish') return 'hand'
  if (sequence === 'finish' || sequence === 'gentle') return 'finishing'
  return sequence === 'light' || sequence === 'light-finish' ? 'light' : 'two-step'
}

/** From where on a better surface is promised and not a perfect one, µm (common practice, no source). */
const THIN = { total: 100, overReference: 25 } as const

const isThin = (total: number, reference: number | null): boolean =>
  total < THIN.total || (reference !== null && total - reference <= THIN.overReference)

/** What readings allow, for the rules; undefined until something was measured. */
export const measuredOf = (paint: PaintOf): Measured | undefined =>
  paint.assessment.measuredPanels === 0
    ? undefined
    : {
        panels: paint.assessment.panels
          .filter((p) => p.totalMean !== null)
          .map((p) => ({
            panel: p.panel,
            allows: levelOf(p.deepest),
            thin: isThin(p.totalMean ?? 0, p.referenceMean),
          })),
      }
