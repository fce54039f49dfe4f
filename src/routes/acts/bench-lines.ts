import * as z from 'zod'
import { MOST_TYPED } from '../../docket/bench-form'
import { fold } from '../../docket/fold'
import { BENCH_KINDS, isBenchKind, kinds, type LineKind } from '../../docket/kinds'
import type { NewLine } from '../../docket/line'
import { keepsWords, TYPED, typedApart } from '../../docket/typed-apart'
import { decisionFaults } from '../../jobsheet/set-faults'
import type { Stmt } from '../../store/db'
import { insertText } from '../../store/texts'
import { type Fault, invalid, tooLong } from '../http/problem'
import { faultsOf } from '../http/read-input'
import type { Call, Load } from '../route'
import { paintNow } from './bench-guards'
import { benchFaults, benchTime, mayWrite } from './bench-rules'
import { appendLines, byOf, type Desk } from './desk'

const maybe = z.exactOptional
const stamps = {
  id: z.string().regex(/^[A-Za-z0-9_-]{8,64}$/),
  device: maybe(z.string().regex(/^[A-Za-z0-9_-]{1,64}$/)),
  n: maybe(z.int().min(0)),
  at: maybe(z.union([z.int().min(0), z.iso.datetime()])),
}

/**
 * A line as a bench sends it: its own id, and from a device that works without a signal also its
 * running number and time; without them the line is of this moment. The server gives the place.
 */
export const benchLine = z.strictObject({
  ...stamps,
  kind: z.string().max(40),
  body: z.record(z.string(), z.json()),
})
export type BenchLine = z.infer<typeof benchLine>

const typed = z.string().min(1).max(MOST_TYPED)

/** The same line with the body of each kind spelled out, as the API describes it: words are typed in place. */
export const benchLineShapes = z.union(
  BENCH_KINDS.map((kind) => {
    const shape = kinds[kind].shape as Readonly<Record<string, z.ZodType>>
    const body = Object.entries(shape).map(([field, schema]) => {
      if (keepsWords(kind) || !(TYPED as readonly string[]).includes(field))
        return [field, schema] as const
      return [field, schema._zod.optin === 'optional' ? maybe(typed) : typed] as const
    })
    return z.strictObject({
      ...stamps,
      kind: z.literal(kind),
      body: z.strictObject(Object.fromEntries(body)),
    })
  }),
)

const momentOf = (at: number | string | undefined, now: number): number =>
  at === undefined ? now : typeof at === 'number' ? at : Date.parse(at)

const apart = (
  call: Call<unknown, unknown, Load>,
  desk: Desk,
  line: BenchLine,
): {
  readonly body: Readonly<Record<string, unknown>>
  readonly texts: readonly Stmt[]
  readonly long: readonly Fault[]
} => {
  const { body, texts } = typedApart(line.kind, line.body, call.newId)
  return {
    body,
    texts: texts.map(({ id, field, text }) =>
      insertText({ id, docket: desk.id, field: `${line.kind}.${field}`, text }),
    ),
    long: texts
      .filter(({ text }) => text.length > MOST_TYPED)
      .map(({ field, text }) => tooLong(`/${field}`, text, MOST_TYPED)),
  }
}

/** The docket with lines that come in the same request: readings a decision rests on may be among them. */
const foldWith = (desk: Desk, lines: readonly NewLine[]) =>
  fold([
    ...desk.lines,
    ...lines.map((l, i) => ({ ...l, docket: desk.id, seq: desk.docket.rev + 1 + i })),
  ])

/**
 * Appends bench lines in the order they came; a line whose id is there already is left as it is, so
 * sending again changes nothing. Throws 422 naming each line and field that is wrong, 409 where the
 * docket takes no such line.
 */
export const addBenchLines = (
  call: Call<unknown, unknown, Load>,
  desk: Desk,
  given: readonly BenchLine[],
) => {
  const known = new Set(desk.lines.map((l) => l.id))
  const faults: Fault[] = []
  const lines: NewLine[] = []
  const texts: Stmt[] = []
  const already: string[] = []
  given.forEach((line, i) => {
    if (known.has(line.id)) {
      already.push(line.id)
      return
    }
    known.add(line.id)
    if (!isBenchKind(line.kind)) {
      faults.push({ pointer: `/lines/${i}/kind`, code: 'ERR_UNKNOWN_KIND' })
      return
    }
    const { body, texts: own, long } = apart(call, desk, line)
    const parsed = kinds[line.kind as LineKind].safeParse(body, { reportInput: true })
    if (!parsed.success) {
      for (const f of faultsOf(parsed.error))
        faults.push({ ...f, pointer: `/lines/${i}/body${f.pointer}` })
      return
    }
    const wrong = benchFaults(line, desk.lines, call.studio.words, call.who)
    const beyond =
      line.kind === 'allowed' && wrong.length === 0
        ? decisionFaults(paintNow(call, { ...desk, docket: foldWith(desk, lines) }), line.body)
        : []
    for (const f of [...long, ...wrong, ...beyond])
      faults.push({ ...f, pointer: `/lines/${i}/body${f.pointer}` })
    texts.push(...own)
    lines.push({
      id: line.id,
      v: 1,
      kind: line.kind,
      body: parsed.data,
      by: byOf(call.who),
      device: line.device ?? 'api',
      n: line.n ?? desk.docket.rev + 1 + i,
      at: benchTime(momentOf(line.at, call.now), call.now),
    })
  })
  if (faults.length > 0) throw invalid(faults)
  if (lines.length === 0) return { docket: desk.docket, added: [], already, writes: [] as Stmt[] }
  mayWrite(
    desk.docket,
    lines.map((l) => l.kind),
  )
  const { writes, docket } = appendLines(desk.id, desk.lines, desk.head, lines)
  return { docket, added: lines.map((l) => l.id), already, writes: [...writes, ...texts] }
}
