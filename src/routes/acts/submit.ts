import type { Doubt } from '../../docket/kinds'
import { script } from '../../intake/script'
import { enqueue } from '../../store/outbox'
import { newReference } from '../http/keys'
import { Problem } from '../http/problem'
import type { Call, Load } from '../route'
import { type Desk, type HeadChange, write } from './desk'
import { deskInput, keepEstimate } from './estimating'
import { figuresOf } from './list-figures'

/** Sends an enquiry: reference, first estimate kept, and word to the studio, in one batch. */
export const submit = async (
  call: Call<unknown, unknown, Load>,
  desk: Desk,
  doubts: readonly Doubt[] = [],
  head: HeadChange = {},
) => {
  if (desk.docket.state !== 'answering')
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.sent' },
      more: { state: desk.docket.state },
    })
  if (desk.replayed.needed.length > 0)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.missing' },
      more: { missing: desk.replayed.needed },
    })
  const reference = newReference(call.deps.random)
  const { made, digest, stmt } = await keepEstimate(
    deskInput(call.studio, call.now, desk),
    script.version,
    call.now,
  )
  const { writes, docket } = write(
    call,
    desk,
    [
      ...(doubts.length > 0 ? [{ kind: 'doubted' as const, body: { because: [...doubts] } }] : []),
      { kind: 'submitted', body: { reference, consent: true } },
      { kind: 'estimated', body: { digest, for: 'submission' } },
    ],
    {
      ...head,
      ...figuresOf(made),
    },
  )
  const message = enqueue({
    id: call.newId(),
    kind: 'enquiry.received',
    docket: desk.id,
    payload: { docket: desk.id, reference, ...(docket.doubtful ? { doubtful: true } : {}) },
    dedupe: `received:${desk.id}:${docket.rev}`,
    nextAt: call.now,
  })
  return { reference, made, digest, docket, writes: [...writes, stmt, message] }
}
