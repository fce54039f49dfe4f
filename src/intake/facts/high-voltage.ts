import { engineKind } from '../questions/engine-kind'
import type { Reader } from '../reader'

/** True when the car carries a high-voltage system. */
export const highVoltage = (r: Reader): boolean =>
  r.as(engineKind, (k) => k === 'electric' || k === 'hybrid') ?? false
