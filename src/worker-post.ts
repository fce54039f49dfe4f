/** A message may take this long in all. */
const TIME_MS = 10_000

/**
 * Sends one message from the edge, which reaches public addresses only: without following a redirect,
 * within ten seconds. The answer's body is not read.
 */
export const workerPost = async (
  url: string,
  headers: Readonly<Record<string, string>>,
  body: string,
): Promise<number | null> => {
  try {
    const answer = await fetch(url, {
      method: 'POST',
      headers,
      body,
      redirect: 'manual',
      signal: AbortSignal.timeout(TIME_MS),
    })
    await answer.body?.cancel()
    return answer.status
  } catch {
    return null
  }
}
