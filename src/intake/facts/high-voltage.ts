import { engineKind } from '../questions/engine-kind'
import type { Reader } from '../reader'

/** True when the car carries a high-voltage system. */
export const highVoltage = (r: Reader): boolean => {
  const k = r.value(engineKind)
  return k === 'electric' || k === 'hybrid'
}
