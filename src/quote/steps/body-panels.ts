import { body } from '../../intake/questions/body'
import { size } from '../../intake/questions/size'
import type { Reader } from '../../intake/reader'
import { type BodyPanel, type BodyStyle, bodyStyles, panelsOf } from '../panels'

const isStyle = (b: string): b is BodyStyle => (bodyStyles as readonly string[]).includes(b)

/** The outer panels of this car with their painted areas in m²; an unknown body counts as a saloon. */
export const bodyPanels = (r: Reader): readonly BodyPanel[] => {
  const b = r.value(body) ?? 'saloon'
  return panelsOf(isStyle(b) ? b : 'saloon', r.value(size) ?? 'mid')
}
