import { resprayPanels } from '../questions/respray-panels'
import type { Reader } from '../reader'

/** Panels painted again, as ids of the respray question. */
export const resprayed = (r: Reader): readonly string[] => r.value(resprayPanels) ?? []
