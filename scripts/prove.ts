import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { proofs } from './proofs/all'
import { type Outcome, type Proof, proofPage } from './proofs/proof'
import { runScript } from './run-script'

const root = fileURLToPath(new URL('..', import.meta.url))

const versions = (): string => {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    version: string
  }
  return `Jambside ${version}, Node ${process.version}, V8 ${process.versions.v8}`
}

const outcomeOf = async (proof: Proof, wanted: readonly string[]): Promise<Outcome> => {
  const left = wanted.length > 0 && !wanted.includes(proof.id) ? 'not asked for this time' : null
  const notRun = left ?? proof.missing()
  if (notRun !== null) return { proof, seconds: 0, notRun, found: null }
  const began = performance.now()
  const found = await proof.run()
  return { proof, seconds: (performance.now() - began) / 1000, notRun: null, found }
}

const notReached = (proof: Proof): Outcome => ({
  proof,
  seconds: 0,
  notRun: 'the run was broken off before it',
  found: null,
})

const say = (outcome: Outcome): void => {
  const { proof, notRun, found, seconds } = outcome
  if (notRun !== null) console.log(`${proof.id}: NOT RUN, ${notRun}`)
  else
    console.log(`${proof.id}: ${found?.holds ? 'holds' : 'DOES NOT HOLD'}, ${seconds.toFixed(0)} s`)
  for (const [name, figure] of found?.figures ?? []) console.log(`  ${name}: ${figure}`)
}

/**
 * `prove [--scale=0.1] [--out=file] [part…]`: runs the long proofs, all at full size unless said
 * otherwise, and writes docs/proof.md.
 */
const main = async (): Promise<void> => {
  const args = process.argv.slice(2)
  const option = (name: string): string | undefined =>
    args.find((a) => a.startsWith(`--${name}=`))?.slice(name.length + 3)
  const scale = Number(option('scale') ?? 1)
  if (!(scale > 0 && scale <= 1)) throw new Error('--scale must be above 0 and at most 1')
  const out = option('out') ?? join(root, 'docs/proof.md')
  const wanted = args.filter((a) => !a.startsWith('--'))
  const all = proofs(scale)
  const unknown = wanted.filter((id) => !all.some((p) => p.id === id))
  if (unknown.length > 0)
    throw new Error(`no proof ${unknown.join(', ')}: ${all.map((p) => p.id).join(', ')}`)
  const outcomes: Outcome[] = []
  for (const proof of all) {
    const outcome = await outcomeOf(proof, wanted)
    say(outcome)
    outcomes.push(outcome)
    // After each part, so that a run that is broken off leaves what it has found.
    mkdirSync(join(root, 'docs'), { recursive: true })
    const rest = all.slice(outcomes.length).map(notReached)
    const today = new Date().toISOString().slice(0, 10)
    writeFileSync(out, proofPage([...outcomes, ...rest], today, versions()))
  }
  if (outcomes.some((o) => o.found !== null && !o.found.holds)) process.exitCode = 1
}

runScript(import.meta.url, main)
