import { bundle, nextMessage, start } from '../bundled'
import { type Loaded, load } from './load'
import type { Scene } from './scene'

export type Both = Readonly<Record<string, { readonly ours: Loaded; readonly bare: Loaded }>>

/** Every route against ours and against the bare server, on Node, one server at a time. */
export const onNode = async (scene: Scene): Promise<Both> => {
  const { file, remove } = await bundle('http/serve.ts')
  const all = async (args: readonly string[]): Promise<Readonly<Record<string, Loaded>>> => {
    const child = start(file, args)
    const { port } = await nextMessage<{ port: number }>(child)
    const server = { base: `http://127.0.0.1:${port}`, pid: child.pid ?? null }
    const found: Record<string, Loaded> = {}
    for (const route of scene.routes) found[route.id] = await load(server, route)
    child.disconnect()
    return found
  }
  try {
    const bare = await all(['bare', scene.copy('bare'), scene.trafficFile])
    const ours = await all(['ours', scene.copy('ours')])
    return Object.fromEntries(
      scene.routes.map(({ id }) => [id, { ours: ours[id]!, bare: bare[id]! }]),
    )
  } finally {
    await remove()
  }
}
