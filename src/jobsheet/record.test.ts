import { expect, it } from 'vitest'
import { beforeAfter } from './record'

const set = (panel: string, values: readonly number[], more: object = {}) => ({
  panel,
  kind: 'panel' as const,
  values,
  when: 'before' as const,
  ...more,
})

it('means of each panel before and after; what was read over film or as a reference counts nowhere', () => {
  const read = beforeAfter([
    set('bonnet', [120, 122]),
    set('bonnet', [118]),
    set('bonnet', [290, 300], { overFilm: true }),
    set('bonnet', [117, 118], { when: 'after' }),
    set('jamb', [98], { kind: 'reference' }),
    set('roof', [250, 251, 251]),
  ])
  expect(read).toEqual([
    { panel: 'bonnet', before: 120, after: 117.5 },
    { panel: 'roof', before: 250.7, after: null },
  ])
})
