import { cpus, platform, release, totalmem } from 'node:os'
import type { AllKept, Kept } from './kept'

/** What a proof found: figures as text by name, and whether they meet what is asked. */
export type Found = {
  readonly holds: boolean
  readonly figures: readonly (readonly [name: string, figure: string])[]
}

export type Proof = {
  readonly id: string
  readonly title: string
  /** What has to be true for the proof to hold. */
  readonly asked: string
  /** Why it cannot run here, or null. */
  readonly missing: () => string | null
  readonly run: () => Found | Promise<Found>
}

const GIB = 2 ** 30

/** The machine in one line. */
export const machine = (): string => {
  const [first] = cpus()
  const memory = (totalmem() / GIB).toFixed(1)
  return `${platform()} ${release()}, ${cpus().length} × ${first?.model.trim() ?? 'unknown processor'}, ${memory} GiB`
}

const section = (proof: Proof, kept: Kept | undefined): string => {
  const head = `## ${proof.title}\n\nAsked: ${proof.asked}.\n\n`
  if (kept === undefined) return `${head}**NOT RUN**: ${proof.missing() ?? 'not yet'}.\n`
  const { found, scale, seconds, when, machine, versions } = kept
  const rows = found.figures.map(([name, figure]) => `| ${name} | ${figure} |`).join('\n')
  const verdict = found.holds ? 'Holds' : '**Does not hold**'
  const size = scale === 1 ? '' : ` **At ${scale} of its full size.**`
  const ran = `${when}, ${seconds.toFixed(0)} s on ${machine}; ${versions}.`
  return `${head}${verdict}.${size} ${ran}\n\n| figure | found |\n| --- | --- |\n${rows}\n`
}

/** The page docs/proof.md: every part with the figures of its last run, whenever that was. */
export const proofPage = (all: readonly Proof[], kept: AllKept): string => `# Proof

Written by \`npm run prove\`; not edited by hand. \`npm run prove -- spread\` runs one part anew and keeps what the
others found, each with its day and machine.

A part that has not run says so and counts for nothing. All seeds are fixed: a further run on the
same versions gives the same figures, times apart.

${all.map((proof) => section(proof, kept[proof.id])).join('\n')}`
