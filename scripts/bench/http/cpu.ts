import { readdirSync, readFileSync } from 'node:fs'

/** Milliseconds the processor spent on all threads of a process so far; null where it is not told (Linux only). */
export const cpuMs = (pid: number): number | null => {
  try {
    return readdirSync(`/proc/${pid}/task`).reduce((sum, thread) => {
      const [onCpu = '0'] = readFileSync(`/proc/${pid}/task/${thread}/schedstat`, 'utf8').split(' ')
      return sum + Number(onCpu) / 1e6
    }, 0)
  } catch {
    return null
  }
}

/** Children of a process that run a program of this name. */
export const childrenOf = (parent: number, name: string): readonly number[] => {
  try {
    return readdirSync('/proc').flatMap((entry) => {
      if (!/^\d+$/.test(entry)) return []
      try {
        const stat = readFileSync(`/proc/${entry}/stat`, 'utf8')
        const comm = stat.slice(stat.indexOf('(') + 1, stat.lastIndexOf(')'))
        const [, ppid] = stat.slice(stat.lastIndexOf(')') + 2).split(' ')
        return comm === name && Number(ppid) === parent ? [Number(entry)] : []
      } catch {
        return []
      }
    })
  } catch {
    return []
  }
}
