/** A queue: each piece of work starts when the one before has settled, whatever its outcome. */
export const oneAtATime = () => {
  let last: Promise<unknown> = Promise.resolve()
  return <T>(work: () => Promise<T>): Promise<T> => {
    const result = last.then(work, work)
    last = result.catch(() => undefined)
    return result
  }
}
