import { typedNumber } from '../intake/typed-number'
import { err, ok, type Result } from '../kernel/result'

export type PastedRow = {
  readonly panel: string
  readonly kind: 'panel' | 'reference'
  readonly values: readonly number[]
}

export type PastedFault = {
  /** Counted from 1. */
  readonly line: number
  readonly code: 'ERR_PASTED_PANEL' | 'ERR_PASTED_VALUES'
  readonly text: string
}

const MOST_UM = 5000
const MOST_VALUES = 50

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ')

/** Columns apart by tabs or semicolons, else by more than one space; a comma may be a decimal sign. */
const cellsOf = (line: string): readonly string[] =>
  line
    .split(/[\t;]/.test(line) ? /[\t;]/ : / {2,}/)
    .map((c) => c.trim())
    .filter((c) => c !== '')

const numberOf = (cell: string): number => {
  const n = Number(typedNumber(cell, 1) ?? Number.NaN)
  return n > 0 && n <= MOST_UM ? n : Number.NaN
}

/**
 * Readings as plain columns: a panel a line, its name (or id) first, then the values in µm; a mark of
 * `reference` behind the name makes it one. Lines without any number above the first row are a heading.
 * Gives every fault by its line: nothing is taken while one is there.
 */
export const pastedReadings = (
  text: string,
  panels: readonly { readonly panel: string; readonly name: string }[],
  reference: string,
): Result<readonly PastedRow[], readonly PastedFault[]> => {
  const rows: PastedRow[] = []
  const faults: PastedFault[] = []
  const byName = new Map(
    panels.flatMap((p) => [
      [plain(p.name), p.panel],
      [plain(p.panel), p.panel],
    ]),
  )
  text.split(/\r?\n/).forEach((raw, i) => {
    const cells = cellsOf(raw)
    const [name = '', ...rest] = cells.length > 1 ? cells : raw.trim().split(/\s(?=[\d.,]+(\s|$))/)
    if (plain(name) === '') return
    const marked = plain(rest[0] ?? '') === plain(reference)
    const given = (marked ? rest.slice(1) : rest)
      .flatMap((c) => (c ?? '').split(/\s+/))
      .filter((c) => c !== '')
    const values = given.map(numberOf)
    if (rows.length === 0 && faults.length === 0 && values.every(Number.isNaN) && given.length > 0)
      return
    const panel = byName.get(plain(name))
    const fault = (code: PastedFault['code']) =>
      faults.push({ line: i + 1, code, text: raw.trim() })
    if (panel === undefined) fault('ERR_PASTED_PANEL')
    else if (values.length === 0 || values.length > MOST_VALUES || values.some(Number.isNaN))
      fault('ERR_PASTED_VALUES')
    else rows.push({ panel, kind: marked ? 'reference' : 'panel', values })
  })
  if (faults.length > 0) return err(faults)
  return rows.length > 0
    ? ok(rows)
    : err([{ line: 1, code: 'ERR_PASTED_VALUES', text: text.trim().slice(0, 40) }])
}
