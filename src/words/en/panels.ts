import type { Catalogue } from '../render'

/** Panels as one would point at them, standing beside the car and looking forward. */
export const panels: Catalogue = {
  'panel.bonnet': 'bonnet',
  'panel.roof': 'roof',
  'panel.boot': 'boot lid or tailgate',
  'panel.front-left': 'left front wing',
  'panel.front-right': 'right front wing',
  'panel.rear-left': 'left rear quarter',
  'panel.rear-right': 'right rear quarter',
  'panel.left-doors': 'left doors',
  'panel.right-doors': 'right doors',
  'panel.front-bumper': 'front bumper',
  'panel.rear-bumper': 'rear bumper',
}
