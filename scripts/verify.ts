import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { runScript } from './run-script'

const root = fileURLToPath(new URL('..', import.meta.url))

/** What is run before every commit, the quickest first: format and lint, types, borders, fast tests. */
const STEPS: readonly (readonly [string, readonly string[]])[] = [
  ['format and lint', ['@biomejs/biome/bin/biome', 'check', '.']],
  ['types', ['typescript/bin/tsc', '-p', 'tsconfig.json']],
  [
    'borders and fast tests',
    [
      'vitest/vitest.mjs',
      'run',
      '--reporter=dot',
      'tests/borders',
      'src/kernel',
      'src/words',
      'src/docket',
      'src/routes',
      'src/quote/price',
      'src/quote/steps/catalogue',
      'src/quote/risks/rules',
    ],
  ],
]

/** Stops at the first step that fails. */
const main = (): void => {
  for (const [name, [tool = '', ...args]] of STEPS) {
    const began = performance.now()
    console.log(`== ${name}`)
    const { status } = spawnSync(process.execPath, [join(root, 'node_modules', tool), ...args], {
      cwd: root,
      stdio: 'inherit',
    })
    console.log(`${((performance.now() - began) / 1000).toFixed(1)} s`)
    if (status !== 0) throw new Error(`${name}: failed`)
  }
}

runScript(import.meta.url, main)
