import { describe, expect, it } from 'vitest'
import { directPredecessors } from './direct-predecessors'
import { steps } from './index'

describe('the nearest predecessors', () => {
  it('drops what another predecessor implies and bridges what is out of scope', () => {
    const a = { id: 'a', after: [] }
    const b = { id: 'b', after: ['a'] }
    const c = { id: 'c', after: ['a', 'b'] }
    expect(directPredecessors([a, b, c]).get('c')).toEqual(['b'])
    expect(directPredecessors([a, c]).get('c')).toEqual(['a'])
  })

  it('keeps the whole order of the catalogue with far fewer links', () => {
    const near = directPredecessors(steps)
    const reach = (id: string): ReadonlySet<string> =>
      new Set((near.get(id) ?? []).flatMap((n) => [n, ...reach(n)]))
    for (const s of steps.filter((_, i) => i % 3 === 0))
      expect([...reach(s.id)].toSorted()).toEqual([...s.after].toSorted())
    const links = [...near.values()].flat().length
    expect(links).toBeLessThan(steps.flatMap((s) => s.after).length / 5)
  })
})
