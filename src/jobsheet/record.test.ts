import { expect, it } from 'vitest'
import { beforeAfter, recordOf } from './record'

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

it('adds up sets run in the same way, and says what may still come off', () => {
  const set = (sets: number, pad?: string) => ({
    panel: 'bonnet',
    sequence: 'finish',
    sets,
    ...(pad ? { pad } : {}),
  })
  const { panels } = recordOf(
    { steps: [], scope: { level: 'light', panels: [], turnedDown: [], lacking: [] } },
    [{ panel: 'bonnet', kind: 'panel', values: [110], when: 'before' }],
    { steps: {}, polished: [set(1, 'soft'), set(2, 'soft'), set(1)] },
    '2026-06-12',
    [{ panel: 'bonnet', light: 1.26, verdict: 'finishing-only' }],
  )
  expect(panels[0]?.polished).toEqual([
    { sequence: 'finish', sets: 3, pad: 'soft' },
    { sequence: 'finish', sets: 1 },
  ])
  expect(panels[0]?.allowance).toBe(1.3)
})
