import { is } from '../../intake/facts/is'
import { panelMaterial } from '../../intake/questions/panel-material'
import type { Reader } from '../../intake/reader'
import { type Context, owns } from '../context'

/**
 * True when a gauge of this studio reads the metal of this car's panels: a magnetic one reads steel,
 * aluminium takes the kind for both metals, composite gives no reading at all (ASTM D7091).
 */
export const gaugeReads = (r: Reader, c: Context): boolean => {
  const dual = owns(c, 'gauge-dual')
  if (!dual && !owns(c, 'gauge-ferrous')) return false
  return !is(r, panelMaterial, ...(dual ? [] : (['aluminium'] as const)), 'plastic-composite')
}
