import { describe, expect, it } from 'vitest'
import { criticalPath } from './critical-path'
import type { Linked } from './network'

const task = (id: string, minutes: number, after: string[] = [], lag = 0): Linked => ({
  id,
  minutes,
  after: after.map((other) => ({ id: other, lag })),
})
/** Activity-on-arrow 'from-to' as tasks: an arrow follows every arrow that ends where it begins. */
const arrows = (list: readonly (readonly [string, number])[]): Linked[] =>
  list.map(([id, minutes]) => {
    const from = id.split('-')[0]
    return task(
      id,
      minutes,
      list.filter(([other]) => other.split('-')[1] === from).map(([o]) => o),
    )
  })
const solved = (tasks: readonly Linked[]) => {
  const path = criticalPath(tasks)
  if (!path.ok) throw new Error(path.error)
  const slack = Object.fromEntries(path.value.times.map((times) => [times.id, times.slack]))
  return { ...path.value, slack }
}

describe('criticalPath', () => {
  // Taylor, Introduction to Management Science, solutions manual chapter 8, first network.
  it('agrees with a published network of 7 arrows', () => {
    const path = solved(
      arrows([
        ['1-2', 7],
        ['1-3', 10],
        ['2-4', 6],
        ['3-4', 5],
        ['3-5', 4],
        ['4-5', 3],
        ['5-6', 2],
      ]),
    )
    expect(path.length).toBe(20)
    expect(path.critical).toEqual(['1-3', '3-4', '4-5', '5-6'])
    expect(path.slack).toEqual({
      '1-2': 2,
      '1-3': 0,
      '2-4': 2,
      '3-4': 0,
      '3-5': 4,
      '4-5': 0,
      '5-6': 0,
    })
  })

  // The same manual, second network (4-5 is a dummy arrow).
  it('agrees with a published network of 13 arrows', () => {
    const path = solved(
      arrows([
        ['1-2', 8],
        ['1-3', 10],
        ['1-4', 9],
        ['2-5', 6],
        ['2-6', 4],
        ['3-5', 5],
        ['4-5', 0],
        ['4-7', 7],
        ['5-7', 12],
        ['5-8', 15],
        ['6-9', 18],
        ['7-8', 4],
        ['8-9', 7],
      ]),
    )
    expect(path.length).toBe(38)
    expect(path.critical).toEqual(['1-3', '3-5', '5-7', '7-8', '8-9'])
    expect(path.slack).toEqual({
      '1-2': 1,
      '1-3': 0,
      '1-4': 6,
      '2-5': 1,
      '2-6': 8,
      '3-5': 0,
      '4-5': 6,
      '4-7': 11,
      '5-7': 0,
      '5-8': 1,
      '6-9': 8,
      '7-8': 0,
      '8-9': 0,
    })
  })

  // Hillier and Lieberman, Reliable Construction: values from memory; mean times of the three points.
  it('agrees with a textbook construction project of 14 activities', () => {
    const path = solved([
      task('A', 2),
      task('B', 4, ['A']),
      task('C', 10, ['B']),
      task('D', 6, ['C']),
      task('E', 4, ['C']),
      task('F', 5, ['E']),
      task('G', 7, ['D']),
      task('H', 9, ['E', 'G']),
      task('I', 7, ['C']),
      task('J', 8, ['F', 'I']),
      task('K', 4, ['J']),
      task('L', 5, ['J']),
      task('M', 2, ['H']),
      task('N', 6, ['K', 'L']),
    ])
    expect(path.length).toBe(44)
    expect(path.critical).toEqual(['A', 'B', 'C', 'E', 'F', 'J', 'L', 'N'])
    const loose = { D: 4, G: 4, H: 4, M: 4, I: 2, K: 1 }
    for (const { id, slack } of path.times) expect(slack).toBe(Reflect.get(loose, id) ?? 0)
  })

  it('counts a lag between finish and start', () => {
    const path = solved([task('coat', 2), task('glass', 5), task('out', 1, ['coat', 'glass'], 12)])
    expect(path.length).toBe(18)
    expect(path.critical).toEqual(['glass', 'out'])
    expect(path.slack.coat).toBe(3)
  })

  it.each([
    ['cycle', [task('a', 1, ['b']), task('b', 1, ['a'])]],
    ['unknown-task', [task('a', 1, ['b'])]],
    ['duplicate-task', [task('a', 1), task('a', 2)]],
  ])('refuses %s', (error, tasks) => {
    expect(criticalPath(tasks)).toEqual({ ok: false, error })
  })

  it('of nothing is nothing', () => {
    expect(criticalPath([])).toEqual({ ok: true, value: { length: 0, times: [], critical: [] } })
  })
})
