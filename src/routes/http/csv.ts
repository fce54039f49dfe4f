/** A character a spreadsheet may take as the beginning of a formula, also after blanks (OWASP, CSV injection). */
const FORMULA = /^[\s\u00a0\ufeff]*[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/

/** A plain number is a number, its minus included. */
const NUMBER = /^-?\d+(\.\d+)?$/

const safeLine = (line: string): string => (FORMULA.test(line) ? `'${line}` : line)

/** One cell: no line of it begins a formula, and it is quoted where RFC 4180 asks for it. */
export const csvCell = (value: string | number | null): string => {
  const text = String(value ?? '').replaceAll('\0', '')
  const safe = NUMBER.test(text)
    ? text
    : text
        .split(/(?<=\n)|(?<=\r)(?!\n)/)
        .map(safeLine)
        .join('')
  return /[",\r\n\t;']/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}

/** One record with its line end (RFC 4180: CRLF). */
export const csvRow = (cells: readonly (string | number | null)[]): string =>
  `${cells.map(csvCell).join(',')}\r\n`
