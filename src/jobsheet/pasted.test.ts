import { expect, it } from 'vitest'
import { pastedReadings } from './pasted'

const PANELS = [
  { panel: 'bonnet', name: 'bonnet' },
  { panel: 'front-left-wing', name: 'front left wing' },
]
const paste = (text: string) => pastedReadings(text, PANELS, 'reference')

it('takes columns apart by tabs, semicolons or wide gaps, and a heading over them', () => {
  const rows = [
    { panel: 'bonnet', kind: 'panel', values: [121, 119.5] },
    { panel: 'front-left-wing', kind: 'reference', values: [98, 99] },
  ]
  for (const text of [
    'bonnet\t121\t119,5\nfront left wing\treference\t98\t99',
    'bonnet;121;119.5\nFront  left wing;reference;98;99\n',
    'panel;first;second\nbonnet;121;119.5\nfront-left-wing;reference;98;99',
  ])
    expect(paste(text)).toEqual({ ok: true, value: rows })
})

it('takes single spaces too, since a name may hold some', () => {
  expect(paste('front left wing 121 119')).toEqual({
    ok: true,
    value: [{ panel: 'front-left-wing', kind: 'panel', values: [121, 119] }],
  })
})

it.each([
  ['tailgate\t99', 1, 'ERR_PASTED_PANEL'],
  ['bonnet\t99\nbonnet\tlots', 2, 'ERR_PASTED_VALUES'],
  ['bonnet\t99\nbonnet', 2, 'ERR_PASTED_VALUES'],
  ['bonnet\t99\t-3', 1, 'ERR_PASTED_VALUES'],
  ['bonnet\t5001', 1, 'ERR_PASTED_VALUES'],
  ['', 1, 'ERR_PASTED_VALUES'],
] as const)('refuses %j at line %d: %s', (text, line, code) => {
  const read = paste(text)
  // A lone line of words counts as a heading, and nothing is left then.
  expect(read.ok ? [] : read.error.map((f) => [f.line, f.code])).toEqual([[line, code]])
})
