import { type LimitKey, limits, type PaintSettings } from './constants'

export type ClampNote = { readonly key: LimitKey; readonly asked: number; readonly used: number }

/**
 * Defaults plus a studio's overrides, each held inside its hard limits; `clamped` names every override
 * that was not taken as asked. A value that is no finite number falls back to the default and is named.
 */
export const clampSettings = (
  overrides: Partial<Readonly<Record<LimitKey, number>>> = {},
): { readonly settings: PaintSettings; readonly clamped: readonly ClampNote[] } => {
  const clamped: ClampNote[] = []
  const used = {} as Record<LimitKey, number>
  for (const key of Object.keys(limits) as LimitKey[]) {
    const { value, hardMin, hardMax } = limits[key]
    const asked = overrides[key]
    used[key] =
      asked === undefined || !Number.isFinite(asked)
        ? value
        : Math.min(hardMax, Math.max(hardMin, asked))
    if (asked !== undefined && asked !== used[key]) clamped.push({ key, asked, used: used[key] })
  }
  if (used.jobCap > used.lifetimeCap) {
    clamped.push({ key: 'jobCap', asked: used.jobCap, used: used.lifetimeCap })
    used.jobCap = used.lifetimeCap
  }
  return { settings: used, clamped }
}

export const defaultSettings: PaintSettings = clampSettings().settings
