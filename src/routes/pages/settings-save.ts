import { type StudioProfile, studioProfile } from '../../quote/studio-profile'
import { insertSettings } from '../../store/settings'
import { profileFaults } from '../acts/profile-faults'
import { type Fault, invalid, Problem } from '../http/problem'
import { faultsOf } from '../http/read-input'
import { type Any, formOf, seeOther } from './page'

/** Previews show this many. */
export const PREVIEWED = 20

/**
 * What was read of a settings form as a profile that may be saved. Throws 422 with each fault;
 * `field` says where in the form a fault of the profile stands.
 */
export const usable = (
  read: { readonly profile: unknown; readonly faults: readonly Fault[] },
  field: (pointer: string) => string = (pointer) => pointer,
): StudioProfile => {
  if (read.faults.length > 0) throw invalid(read.faults)
  const parsed = studioProfile.safeParse(read.profile, { reportInput: true })
  const faults = parsed.success ? profileFaults(parsed.data) : faultsOf(parsed.error)
  if (faults.length > 0 || !parsed.success)
    throw invalid(faults.map((f) => ({ ...f, pointer: field(f.pointer) })))
  return parsed.data
}

/** Saves the next revision of the settings and shows it at `to`. */
export const saved = (call: Any, body: StudioProfile, to: string) =>
  seeOther(to, {
    writes: [insertSettings({ rev: call.studio.rev + 1, body, by: call.who.kind, at: call.now })],
  })

/** Throws 412 where the settings were saved anew since the form was opened. */
export const checkRev = (call: Any): void => {
  if (formOf(call).get('rev') !== String(call.studio.rev)) throw new Problem('stale')
}
