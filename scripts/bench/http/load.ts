import http from 'node:http'
import { at } from '../timed'
import { NTH, WHICH } from './bare-app'
import { cpuMs } from './cpu'
import { type Route, SINGLE } from './traffic'

export type Loaded = {
  readonly p50: number
  readonly p99: number
  readonly max: number
  /** Milliseconds of processor time a request, all threads of the server; null where not to be had. */
  readonly cpu: { readonly p50: number; readonly p99: number } | null
  readonly bytes: number
  readonly requests: number
}

type Server = { readonly base: string; readonly pid: number | null }

const send = (base: string, route: Route, n: number, agent: http.Agent): Promise<number> =>
  new Promise((resolve, reject) => {
    const { method, path, headers, body } = route.requests[n]!
    const request = http.request(
      `${base}${path}`,
      {
        method,
        agent,
        headers: {
          ...headers,
          [WHICH]: route.id,
          [NTH]: String(n),
          'x-forwarded-for': `10.1.0.${n % 200}`,
        },
      },
      (answer) => {
        let bytes = 0
        answer.on('data', (chunk: Buffer) => {
          bytes += chunk.length
        })
        answer.on('end', () =>
          (answer.statusCode ?? 500) < 400
            ? resolve(bytes)
            : reject(new Error(`${route.id} ${n}: ${answer.statusCode}`)),
        )
        answer.on('error', reject)
      },
    )
    request.on('error', reject)
    request.end(body)
  })

const singly = async (
  server: Server,
  route: Route,
  from: number,
  to: number,
  agent: http.Agent,
) => {
  const cpu: number[] = []
  for (let n = from; n < to; n++) {
    const before = server.pid === null ? null : cpuMs(server.pid)
    await send(server.base, route, n, agent)
    const after = server.pid === null ? null : cpuMs(server.pid)
    if (before !== null && after !== null) cpu.push(after - before)
  }
  return cpu.sort((a, b) => a - b)
}

/**
 * Warms up, reads the processor's time around requests sent one by one, then sends the rest at a
 * constant rate. A latency counts from when the request was due, not from when it was sent, so that
 * a server that stalls is charged for all it kept waiting (no coordinated omission).
 */
export const load = async (server: Server, route: Route): Promise<Loaded> => {
  const agent = new http.Agent({ keepAlive: true, maxSockets: 64 })
  const { warm, requests, perSecond } = route
  const single = Math.min(SINGLE, Math.floor((requests.length - warm) / 2))
  await singly(server, route, 0, warm, agent)
  const cpu = await singly(server, route, warm, warm + single, agent)
  const first = warm + single
  const begin = performance.now() + 20
  let bytes = 0
  const latencies = await Promise.all(
    requests.slice(first).map(async (_, i) => {
      const due = begin + (i * 1000) / perSecond
      await new Promise((wake) => setTimeout(wake, Math.max(0, due - performance.now())))
      bytes = await send(server.base, route, first + i, agent)
      return performance.now() - due
    }),
  )
  agent.destroy()
  latencies.sort((a, b) => a - b)
  return {
    p50: at(latencies, 0.5),
    p99: at(latencies, 0.99),
    max: at(latencies, 1),
    cpu: cpu.length === 0 ? null : { p50: at(cpu, 0.5), p99: at(cpu, 0.99) },
    bytes,
    requests: latencies.length,
  }
}
