import { expect, it } from 'vitest'
import { csvCell, csvRow } from './csv'

// OWASP, "CSV Injection": what a spreadsheet takes as a formula begins with = + - @ tab or CR.
it.each([
  ['=1+1', `"'=1+1"`],
  ['+1 555 0142', `"'+1 555 0142"`],
  ['-2+3', `"'-2+3"`],
  ['@SUM(A1)', `"'@SUM(A1)"`],
  ['\t=1', `"'\t=1"`],
  [' =1', `"' =1"`],
  ['\u00a0=1', `"'\u00a0=1"`],
  ['＝1', `"'＝1"`],
  ['a\n=1', `"a\n'=1"`],
  ['a\r=1', `"a\r'=1"`],
  ['a\r\n=1', `"a\r\n'=1"`],
])('%j does not begin a formula', (typed, cell) => {
  expect(csvCell(typed)).toBe(cell)
})

// RFC 4180, section 2, rules 5 to 7.
it.each([
  ['plain', 'plain'],
  ['a, b', '"a, b"'],
  ['say "so"', '"say ""so"""'],
  [-12.5, '-12.5'],
  ['-1250.00', '-1250.00'],
  [null, ''],
])('%j is written as RFC 4180 has it', (typed, cell) => {
  expect(csvCell(typed)).toBe(cell)
})

it('ends a record with CRLF', () => {
  expect(csvRow(['a', 1, null])).toBe('a,1,\r\n')
})
