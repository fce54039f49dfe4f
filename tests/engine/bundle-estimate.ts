import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

/** The estimate and its worker face as one module's text, the same for every engine. */
export const bundleEstimate = async (): Promise<string> => {
  const { outputFiles } = await build({
    stdin: {
      contents: `export * from './estimate-module'; export { worker as default } from './estimate-module'`,
      resolveDir: fileURLToPath(new URL('.', import.meta.url)),
      loader: 'ts',
    },
    bundle: true,
    write: false,
    format: 'esm',
    target: 'es2022',
    conditions: ['workerd', 'worker', 'browser'],
  })
  const [file] = outputFiles
  if (file === undefined) throw new Error('nothing was bundled')
  return file.text
}
