import { has } from '../intake/facts/has'
import { vehicleKind } from '../intake/facts/vehicle-kind'
import { wants } from '../intake/facts/wants'
import { dangers } from '../intake/questions/dangers'
import { defects } from '../intake/questions/defects'
import type { Session } from '../intake/session'
import type { PolishLevel } from './context'
import type { Estimate } from './estimate-types'
import { expectationOf, removalOf, type SequenceId, sequenceById } from './paint'
import type { PaintOf } from './paint-of'

/** What a level amounts to on the paint, for the share of marks it takes. */
const SEQUENCE: Readonly<Record<PolishLevel, SequenceId>> = {
  none: 'hand-glaze',
  hand: 'hand-finish',
  finishing: 'gentle',
  light: 'light',
  'two-step': 'two-step',
}

const CLASSES: Readonly<Record<string, Parameters<typeof expectationOf>[1][number]>> = {
  haze: { class: 'haze' },
  'wash-marks': { class: 'swirls' },
  scratches: { class: 'light', share: 0.5 },
}

const fives = (share: number): number => Math.round(share * 20) / 20

/** The honest sentence about the result, with the share of visible marks that goes. */
export const expectationPhrase = (
  s: Session,
  level: PolishLevel,
  paint: PaintOf,
): Estimate['expectation'] => {
  const r = s.reader
  const read = s.begin()
  if (vehicleKind(r) !== 'car')
    return { removedShare: null, phrase: { key: 'expect.look' }, because: s.names(read) }
  if (!wants(r, 'paint') || level === 'none') {
    const onlyCabin = wants(r, 'cabin') && !wants(r, 'paint', 'protect')
    const key =
      has(r, dangers, 'matte') && wants(r, 'paint', 'protect')
        ? 'expect.matte'
        : onlyCabin
          ? 'expect.cabin'
          : 'expect.none'
    return { removedShare: null, phrase: { key }, because: s.names(read) }
  }
  const marks = (r.value(defects) ?? []).flatMap((d) => CLASSES[d] ?? [])
  const factors = paint.assessment.panels.map((p) => p.permit.factor)
  const factor = factors.length === 0 ? 1 : Math.min(...factors)
  const found = expectationOf(removalOf(sequenceById(SEQUENCE[level]).steps, factor), marks)
  const removedShare = { low: fives(found.low), high: fives(Math.max(found.high, found.low + 0.1)) }
  const deep = has(r, defects, 'nail-scratch', 'chips')
  const key = deep ? 'expect.share-deep' : 'expect.share'
  return {
    removedShare,
    phrase: {
      key: removedShare.low === 0 ? `${key}.up-to` : key,
      params: { low: removedShare.low, high: Math.min(0.95, removedShare.high) },
    },
    because: [...new Set([...s.names(read), ...paint.because])].sort(),
  }
}
