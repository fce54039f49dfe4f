import type { Child, FC } from 'hono/jsx'
import type { Frame } from './frame'
import { Layout } from './layout'

export const PROBLEM_KINDS = [
  'unknown',
  'not-now',
  'stale',
  'too-large',
  'wrong-type',
  'too-many',
  'away',
  'signed-out',
  'not-allowed',
  'fault',
] as const
export type ProblemKind = (typeof PROBLEM_KINDS)[number]

export type ProblemPageProps = {
  readonly frame: Frame
  readonly kind: ProblemKind
  /** What is possible instead, in words. */
  readonly possible?: readonly string[]
  /** The way back to where things stand. */
  readonly back?: { readonly href: string; readonly text: string }
  /** To name when calling the studio. */
  readonly requestId?: string
  readonly retryAfterSeconds?: number
  /** Typed text that would be lost otherwise, to copy. */
  readonly typed?: readonly { readonly label: string; readonly text: string }[]
  readonly children?: Child
}

/** What went wrong in plain words, and what to do now; nothing typed is lost. */
export const ProblemPage: FC<ProblemPageProps> = (p) => {
  const { words } = p.frame
  const title = words.say(`page.problem.${p.kind}`)
  return (
    <Layout frame={p.frame} title={title}>
      <section>
        <h1>{title}</h1>
        <p>{words.say(`page.problem.${p.kind}.do`)}</p>
        {p.retryAfterSeconds ? (
          <p>{words.say('page.problem.wait', { n: p.retryAfterSeconds })}</p>
        ) : null}
        {p.possible && p.possible.length > 0 ? (
          <>
            <p>{words.say('page.problem.possible')}</p>
            <ul>
              {p.possible.map((text) => (
                <li>{text}</li>
              ))}
            </ul>
          </>
        ) : null}
        {(p.typed ?? []).map((t) => (
          <div class="field">
            <p class="asked">{t.label}</p>
            <p class="said">{t.text}</p>
          </div>
        ))}
        {p.children}
        {p.back ? (
          <div class="acts">
            <a class="button" href={p.back.href}>
              {p.back.text}
            </a>
          </div>
        ) : null}
        {p.requestId ? (
          <p class="quietly">{words.say('page.problem.number', { id: p.requestId })}</p>
        ) : null}
      </section>
    </Layout>
  )
}
