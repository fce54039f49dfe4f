import type { Estimate } from './estimate-types'
import type { PaintOf } from './paint-of'
import { paintReasons, panelReasons } from './reasons'
import { saidVerdict } from './said-verdict'

/** The panels as the estimate shows them, each verdict with its reasons and the limits behind them. */
export const paintLines = (paint: PaintOf): Estimate['paint'] => ({
  panels: paint.assessment.panels.map((p) => ({
    panel: p.panel,
    topcoat: p.topcoat,
    total: p.totalMean,
    light: p.light,
    strong: p.strong,
    deepest: p.deepest,
    verdict: saidVerdict(p),
    why: p.why.map((w) => ({ key: w.code, params: w.params })),
    because: paint.because,
    reasons: panelReasons(p, paint.assessment.settings),
  })),
  reasons: paintReasons(paint.priors),
})
