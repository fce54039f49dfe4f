import { paths } from '../paths'

/** Where the sheet's parts lie, for the page itself and for its code in the browser. */
export const addresses = {
  sheet: paths.bench,
  carried: paths.benchCarried,
  words: paths.benchWords,
  lines: paths.benchLines,
  findings: paths.benchFindings,
} as const
