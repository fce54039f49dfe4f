import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { proofs } from './proofs/all'
import { type Kept, readKept, writeKept } from './proofs/kept'
import { machine, type Proof, proofPage } from './proofs/proof'
import { runScript } from './run-script'

const root = fileURLToPath(new URL('..', import.meta.url))

const versions = (): string => {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    version: string
  }
  return `Jambside ${version}, Node ${process.version}, V8 ${process.versions.v8}`
}

/** One line and its figures, as they are found. */
const say = (id: string, { found, seconds }: Kept): void => {
  console.log(`${id}: ${found.holds ? 'holds' : 'DOES NOT HOLD'}, ${seconds.toFixed(0)} s`)
  for (const [name, figure] of found.figures) console.log(`  ${name}: ${figure}`)
}

const runOne = async (proof: Proof, scale: number): Promise<Kept> => {
  const began = performance.now()
  const found = await proof.run()
  const seconds = (performance.now() - began) / 1000
  const when = new Date().toISOString().slice(0, 10)
  return { when, machine: machine(), versions: versions(), scale, seconds, found }
}

/**
 * `prove [--scale=0.1] [--out=file] [part…]`: runs the long proofs, all at full size unless said
 * otherwise, and writes docs/proof.md. What parts that were not asked for found before is kept beside
 * it, in proof.json; after each part both are written, so that a run may be broken off and taken up.
 */
const main = async (): Promise<void> => {
  const args = process.argv.slice(2)
  const option = (name: string): string | undefined =>
    args.find((a) => a.startsWith(`--${name}=`))?.slice(name.length + 3)
  const scale = Number(option('scale') ?? 1)
  if (!(scale > 0 && scale <= 1)) throw new Error('--scale must be above 0 and at most 1')
  const out = option('out') ?? join(root, 'docs/proof.md')
  const keptFile = out.replace(/(\.md)?$/, '.json')
  const wanted = args.filter((a) => !a.startsWith('--'))
  const all = proofs(scale)
  const unknown = wanted.filter((id) => !all.some((p) => p.id === id))
  if (unknown.length > 0)
    throw new Error(`no proof ${unknown.join(', ')}: ${all.map((p) => p.id).join(', ')}`)
  let failed = 0
  for (const proof of all) {
    if (wanted.length > 0 && !wanted.includes(proof.id)) continue
    const missing = proof.missing()
    if (missing !== null) {
      console.log(`${proof.id}: NOT RUN, ${missing}`)
      continue
    }
    const one = await runOne(proof, scale)
    say(proof.id, one)
    if (!one.found.holds) failed += 1
    // Read anew: another part may have been proved meanwhile by another run.
    const kept = { ...readKept(keptFile), [proof.id]: one }
    writeKept(keptFile, kept)
    writeFileSync(out, proofPage(all, kept))
  }
  if (failed > 0) process.exitCode = 1
}

runScript(import.meta.url, main)
