import { expect, it } from 'vitest'
import { viewHead, viewRows } from './csv-views'
import type { ExportPage } from './export-pages'

const at = Date.UTC(2026, 2, 2, 9)
const line = (seq: number, kind: string, body: unknown) => ({
  docket: 'd',
  seq,
  id: `l${seq}`,
  v: 1,
  kind,
  body,
  by: 'bench',
  device: null,
  n: null,
  at,
})

const page = {
  heads: [
    {
      docket: 'd',
      reference: 'ABC-234',
      title: '=HYPERLINK("x")',
      state: 'dated',
      person: 'p',
      receivedAt: at,
      wantedBy: null,
      jobDate: '2026-03-09',
      readyDate: null,
      priceLow: 10_000,
      priceLikely: 12_345,
      priceHigh: 20_000,
      currency: 'EUR',
    },
  ],
  people: [{ id: 'p', docket: 'd', name: '@robin', email: null, phone: '+353 1', plate: null }],
  lines: [
    line(1, 'revised', {
      revision: 1,
      offer: {
        currency: 'EUR',
        lines: [{ step: 'wash', name: '-1+1', minutes: 30, amount: -500 }],
      },
    }),
    line(2, 'sent', { revision: 1 }),
    line(3, 'done', { step: 'wash', minutes: 25, entered: true }),
    line(4, 'done', { step: 'clay', minutes: 5 }),
    line(5, 'struck', { line: 'l4', why: 'twice' }),
  ],
} as unknown as ExportPage

it('a docket, an offer line and a step done are one record each, and none begins a formula', () => {
  expect(viewRows('dockets', page)).toBe(
    `d,ABC-234,"'=HYPERLINK(""x"")",dated,2026-03-02T09:00:00.000Z,,2026-03-09,,"'@robin",,"'+353 1",,100.00,123.45,200.00,EUR\r\n`,
  )
  expect(viewRows('offers', page)).toBe(`d,ABC-234,1,yes,wash,"'-1+1",30,-5.00,EUR\r\n`)
  expect(viewRows('work', page)).toBe('d,ABC-234,wash,25,yes,bench,2026-03-02T09:00:00.000Z\r\n')
})

it('has a name above every column', () => {
  for (const view of ['dockets', 'offers', 'work'] as const) {
    const first = viewRows(view, page).split('\r\n')[0] ?? ''
    expect(viewHead(view).trim().split(',')).toHaveLength(first.split(',').length)
  }
})
