import type { BodyOf } from '../../docket/kinds'
import { decimalFromMinor } from '../../kernel/currency'
import { csvRow } from '../http/csv'
import type { ExportPage } from './export-pages'

export const VIEWS = ['dockets', 'offers', 'work'] as const
export type View = (typeof VIEWS)[number]

type Cell = string | number | null

const HEADS: Readonly<Record<View, readonly string[]>> = {
  dockets: [
    'docket reference title state received wanted_by job_date ready_date name email phone plate',
    'price_low price_likely price_high currency',
  ],
  offers: ['docket reference revision sent step name minutes amount currency'],
  work: ['docket reference step minutes entered by at'],
}

/** The first record of a view. */
export const viewHead = (view: View): string =>
  csvRow(HEADS[view].flatMap((names) => names.split(' ')))

const iso = (at: number | null): string | null => (at === null ? null : new Date(at).toISOString())

const money = (amount: number | null, currency: string | null): Cell => {
  if (amount === null || currency === null) return null
  const text = decimalFromMinor(amount, currency)
  return text.ok ? text.value : amount
}

const dockets = (page: ExportPage): readonly (readonly Cell[])[] =>
  page.heads.map((h) => {
    const p = page.people.find((each) => each.id === h.person)
    return [
      ...[h.docket, h.reference, h.title, h.state, iso(h.receivedAt), h.wantedBy, h.jobDate],
      ...[h.readyDate, p?.name ?? null, p?.email ?? null, p?.phone ?? null, p?.plate ?? null],
      ...[h.priceLow, h.priceLikely, h.priceHigh].map((price) => money(price, h.currency)),
      h.currency,
    ]
  })

const referenceIn = (page: ExportPage) => {
  const known = new Map(page.heads.map((h) => [h.docket, h.reference]))
  return (docket: string): string | null => known.get(docket) ?? null
}

const struckIn = (page: ExportPage): ReadonlySet<string> =>
  new Set(
    page.lines.flatMap((l) => (l.kind === 'struck' ? [(l.body as BodyOf<'struck'>).line] : [])),
  )

const offers = (page: ExportPage): readonly (readonly Cell[])[] => {
  const reference = referenceIn(page)
  const sent = new Set(
    page.lines.flatMap((l) =>
      l.kind === 'sent' ? [`${l.docket} ${(l.body as BodyOf<'sent'>).revision}`] : [],
    ),
  )
  return page.lines.flatMap((l) => {
    if (l.kind !== 'revised') return []
    const { revision, offer } = l.body as BodyOf<'revised'>
    const out = sent.has(`${l.docket} ${revision}`) ? 'yes' : 'no'
    return offer.lines.map((each) => [
      ...[l.docket, reference(l.docket), revision, out, each.step, each.name ?? null],
      ...[each.minutes, money(each.amount, offer.currency), offer.currency],
    ])
  })
}

const work = (page: ExportPage): readonly (readonly Cell[])[] => {
  const reference = referenceIn(page)
  const struck = struckIn(page)
  return page.lines.flatMap((l) => {
    if (l.kind !== 'done' || struck.has(l.id)) return []
    const { step, minutes, entered } = l.body as BodyOf<'done'>
    const how = entered ? 'yes' : 'no'
    return [[l.docket, reference(l.docket), step, minutes ?? null, how, l.by, iso(l.at)]]
  })
}

const ROWS = { dockets, offers, work } as const

/** The records of a view for one page of an export. No cell begins a formula. */
export const viewRows = (view: View, page: ExportPage): string =>
  ROWS[view](page).map(csvRow).join('')
