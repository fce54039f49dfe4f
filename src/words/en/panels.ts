import type { Catalogue } from '../render'

/** Panels as one would point at them, sitting in the car and looking forward. */
export const panels: Catalogue = {
  'panel.front-left': 'left front wing',
  'panel.left-front-door': 'left front door',
  'panel.left-rear-door': 'left rear door',
  'panel.left-doors': 'left doors',
  'panel.left-sill': 'left sill',
  'panel.rear-left': 'left rear quarter',
  'panel.rear-bumper': 'rear bumper',
  'panel.boot': 'boot lid or tailgate',
  'panel.rear-right': 'right rear quarter',
  'panel.right-sill': 'right sill',
  'panel.right-rear-door': 'right rear door',
  'panel.right-front-door': 'right front door',
  'panel.right-doors': 'right doors',
  'panel.front-right': 'right front wing',
  'panel.front-bumper': 'front bumper',
  'panel.bonnet': 'bonnet',
  'panel.roof': 'roof',
}
