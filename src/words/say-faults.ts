import type { Words } from './render'

type Fault = {
  readonly pointer: string
  readonly code: string
  readonly params?: Readonly<Record<string, string | number | readonly string[]>>
}

/** Faults with their sentences; a code without one of its own says that the value cannot be taken. */
export const sayFaults = (faults: readonly Fault[], words: Words) =>
  faults.map(({ pointer, code, params }) => ({
    pointer,
    code,
    message: words.say(words.has(`error.${code}`) ? `error.${code}` : 'error.ERR_VALUE', params),
  }))
