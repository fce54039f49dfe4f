import { expect, it } from 'vitest'
import { levelsOf, shrunkPanels } from './shrinkage'

const agreed = [
  { id: 'wash', places: [] },
  { id: 'polish-cut', places: ['bonnet', 'roof'] },
  { id: 'polish-light', places: ['bonnet', 'roof', 'boot'] },
]

it('a panel is polished as deep as the deepest step that names it', () => {
  expect([...levelsOf(agreed)]).toEqual([
    ['bonnet', 'two-step'],
    ['roof', 'two-step'],
    ['boot', 'light'],
  ])
})

it('names what cannot be polished as deep as agreed, and nothing that can', () => {
  expect(shrunkPanels(agreed, agreed)).toEqual([])
  const now = [
    { id: 'polish-light', places: ['bonnet', 'boot'] },
    { id: 'polish-hand', places: ['roof'] },
  ]
  expect(shrunkPanels(agreed, now)).toEqual([
    { panel: 'bonnet', promised: 'two-step', now: 'light' },
    { panel: 'roof', promised: 'two-step', now: 'hand' },
  ])
  expect(shrunkPanels(agreed, []).map((s) => s.now)).toEqual(['none', 'none', 'none'])
  expect(shrunkPanels(now, agreed)).toEqual([])
})
