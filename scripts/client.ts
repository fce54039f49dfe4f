import { mkdir, writeFile } from 'node:fs/promises'
import { dirname } from 'node:path'
import { type GenerateApiParams, generateApi } from 'swagger-typescript-api'
import { openapi } from '../src/routes/openapi'
import { registry } from '../src/routes/registry'
import { runScript } from './run-script'

type Spec = Extract<GenerateApiParams, { spec: unknown }>['spec']

/**
 * Writes a typed client of the whole API as one file without dependencies, made from the same list of
 * routes that mounts and describes them. `origin` is the address it calls when none is given.
 */
export const writeClient = async (file: string, origin: string): Promise<void> => {
  const spec = openapi(registry, origin) as unknown as Spec
  const { files } = await generateApi({
    spec,
    output: false,
    httpClientType: 'fetch',
    unwrapResponseData: true,
    silent: true,
  })
  const made = files[0]?.fileContent
  if (files.length !== 1 || made === undefined) throw new Error('no client was made')
  await mkdir(dirname(file), { recursive: true })
  await writeFile(file, made)
}

runScript(import.meta.url, async () => {
  const [, , file = 'dist/client/jambside.ts', origin = 'http://127.0.0.1:8787'] = process.argv
  await writeClient(file, origin)
  console.log(file)
})
