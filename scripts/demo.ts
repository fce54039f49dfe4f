import { resolve } from 'node:path'
import { fillDemo } from '../dev/demo/fill-demo'
import { parseConfig } from '../src/config'
import { runScript } from './run-script'

const into = (argv: readonly string[]): string | null => {
  const at = argv.indexOf('--into')
  if (at === -1) return null
  const folder = argv[at + 1]
  if (folder === undefined) throw new Error('--into needs a folder')
  return folder
}

/** Fills an empty data folder with an invented studio, its customers and their cars. */
runScript(import.meta.url, async () => {
  const config = parseConfig(process.env)
  const other = into(process.argv)
  const folder = resolve(other ?? config.dataDir)
  const origin = config.publicOrigin ?? `http://${config.host}:${config.port}`
  const filled = await fillDemo(folder, origin, Date.now())
  for (const d of filled) console.log(`  ${d.state.padEnd(12)} ${d.title} · ${d.name}`)
  const linked = ['quoted', 'held', 'handed-over'].flatMap((state) => {
    const found = filled.find((d) => d.state === state && d.link !== null)
    return found ? [`  ${state.padEnd(12)} ${found.link}`] : []
  })
  console.log(`
${filled.length} invented dockets are in ${folder}. Start it with:

  ${other === null ? '' : `DATA_DIR=${folder} `}npm start

It prints a link that signs this browser in as the studio. As a customer, once it runs:

${linked.join('\n')}`)
})
