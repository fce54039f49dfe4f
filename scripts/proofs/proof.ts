import { cpus, platform, release, totalmem } from 'node:os'

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

export type Outcome = {
  readonly proof: Pick<Proof, 'id' | 'title' | 'asked'>
  readonly seconds: number
  readonly notRun: string | null
  readonly found: Found | null
}

const GIB = 2 ** 30

/** The machine in one line. */
export const machine = (): string => {
  const [first] = cpus()
  const memory = (totalmem() / GIB).toFixed(1)
  return `${platform()} ${release()}, ${cpus().length} × ${first?.model.trim() ?? 'unknown processor'}, ${memory} GiB`
}

const section = ({ proof, seconds, notRun, found }: Outcome): string => {
  const head = `## ${proof.title}\n\nAsked: ${proof.asked}.\n\n`
  if (notRun !== null) return `${head}**NOT RUN**: ${notRun}.\n`
  const rows = (found?.figures ?? []).map(([name, figure]) => `| ${name} | ${figure} |`).join('\n')
  const verdict = found?.holds ? 'Holds' : '**Does not hold**'
  return `${head}${verdict}; ${seconds.toFixed(0)} s.\n\n| figure | found |\n| --- | --- |\n${rows}\n`
}

/** The page docs/proof.md. */
export const proofPage = (
  outcomes: readonly Outcome[],
  when: string,
  versions: string,
): string => `# Proof

Written by \`npm run prove\`; not edited by hand. ${when}, on ${machine()}; ${versions}.

A part that could not run says so and counts for nothing. All seeds are fixed: a further run on the
same versions gives the same figures, times apart.

${outcomes.map(section).join('\n')}`
