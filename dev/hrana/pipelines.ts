import { randomBytes } from 'node:crypto'
import { type HranaBatch, HranaFault, type PipelineRequest } from './protocol'
import { toHranaError } from './run-statement'
import { type HranaStream, openStream, type StreamOptions } from './stream'

/** What reached the server since the last reset. A pipeline is one round trip. */
export type Counts = {
  pipelines: number
  batches: number
  /** Batches that took the write lock; the others only read. */
  writes: number
  executes: number
  statements: number
}

const writes = ({ steps }: HranaBatch): boolean =>
  steps.some(({ stmt }) => typeof stmt.sql === 'string' && /^begin immediate/i.test(stmt.sql))

export type Pipelines = {
  /** Runs one pipeline body and gives its answer. Throws HranaFault for a stream that is not there. */
  run(body: PipelineRequest): Promise<object>
  closeAll(): void
}

export const createPipelines = (
  options: StreamOptions & { readonly idleMs: number },
  counts: Counts,
): Pipelines => {
  const idle = new Map<string, { readonly stream: HranaStream; readonly timer: NodeJS.Timeout }>()

  const take = (baton: string | null | undefined): HranaStream => {
    if (baton === null || baton === undefined) return openStream(options)
    const found = idle.get(baton)
    if (found === undefined) {
      throw new HranaFault('STREAM_EXPIRED', 'The stream has expired due to inactivity')
    }
    idle.delete(baton)
    clearTimeout(found.timer)
    return found.stream
  }
  const park = (stream: HranaStream): string | null => {
    if (stream.closed) return null
    const baton = randomBytes(24).toString('base64url')
    const expire = () => {
      idle.delete(baton)
      stream.close()
    }
    idle.set(baton, { stream, timer: setTimeout(expire, options.idleMs).unref() })
    return baton
  }

  return {
    run: async ({ baton, requests }) => {
      counts.pipelines += 1
      const stream = take(baton)
      const results: object[] = []
      for (const request of requests) {
        if (request.type === 'batch') {
          counts.batches += 1
          counts.writes += writes(request.batch) ? 1 : 0
          counts.statements += request.batch.steps.length
        }
        if (request.type === 'execute') {
          counts.executes += 1
          counts.statements += 1
        }
        try {
          results.push({ type: 'ok', response: await stream.handle(request) })
        } catch (error) {
          results.push({ type: 'error', error: toHranaError(error) })
        }
      }
      return { baton: park(stream), base_url: null, results }
    },
    closeAll: () => {
      for (const { stream, timer } of idle.values()) {
        clearTimeout(timer)
        stream.close()
      }
      idle.clear()
      options.connections.closeAll()
    },
  }
}
