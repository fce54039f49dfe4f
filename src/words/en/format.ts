import type { Catalogue } from '../render'

/** How figures are written by themselves; the locale of the studio decides the rest. */
export const format: Catalogue = {
  'format.hours': '{n}\u00a0h',
  'format.minutes': '{n}\u00a0min',
  'format.money': '{v:money}',
  'format.round': '{v:round}',
  'format.time': '{v:hours}',
  'format.date': '{v:date}',
  'format.clock': '{v:clock}',
  'format.um': '{v:um}',
  'format.percent': '{v:percent}',
  'format.number': '{v}',
  'format.list': '{v}',
}
