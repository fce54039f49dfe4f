import { press } from '../../tests/browser/visit'
import type { Stage } from './stage'

type Fields = Readonly<Record<string, string>>

const MINUTE = 60_000

/** Sends a form of the bench page without showing it: the dozens of taps no picture is taken of. */
const quietly = async ({ bench, studio }: Stage, path: string, fields: Fields): Promise<void> => {
  const answer = await bench.page.request.post(studio.origin + path, {
    form: { ...fields },
    headers: { origin: studio.origin },
  })
  if (!answer.ok()) throw new Error(`${path} answered ${answer.status()}: ${await answer.text()}`)
}

export const line = (s: Stage, id: string, kind: string, fields: Fields) =>
  quietly(s, `/bench/${id}/lines`, { kind, ...fields })

type Step = {
  readonly id: string
  readonly state: string
  readonly expectedMinutes: number
  readonly lagMinutes: number
}
type Sheet = {
  readonly steps: readonly Step[]
  readonly checks: readonly { readonly id: string; readonly state: string }[]
}

const sheet = async ({ bench, studio }: Stage, id: string): Promise<Sheet> =>
  (await bench.page.request.get(`${studio.origin}/api/v1/dockets/${id}/sheet`)).json()

/** Works down the sheet up to `until` (not it), each step in about its time. */
export const workUntil = async (
  s: Stage,
  id: string,
  until: string | null,
  /** Steps left for later. */
  later: ReadonlySet<string> = new Set(),
): Promise<void> => {
  const { steps } = await sheet(s, id)
  for (const step of steps) {
    if (step.id === until) return
    if (step.state === 'done' || step.id === 'hand-over' || later.has(step.id)) continue
    await line(s, id, 'began', { step: step.id })
    s.studio.clock.now += Math.round(step.expectedMinutes) * MINUTE
    await line(s, id, 'done', { step: step.id })
    s.studio.clock.now += step.lagMinutes * MINUTE
  }
  if (until !== null) throw new Error(`the sheet has no ${until}`)
}

export const checkIn = async (s: Stage, id: string, mileage: string): Promise<void> => {
  await s.bench.page.goto(`/bench/${id}`)
  await s.shoot(s.bench.page, 'bench-arrives', { pieces: 2 })
  await line(s, id, 'checked-in', { mileage, fuel: 'half', keys: '1', 'consents[]': 'photos' })
  s.studio.clock.now += 5 * MINUTE
  await s.bench.page.goto(`/bench/${id}`)
  await s.shoot(s.bench.page, 'bench-step')
}

export type Reading = readonly [panel: string, of: 'panel' | 'reference', values: string]

/** The first reading is typed where it can be seen; the panels follow with their verdicts. */
export const measure = async (
  s: Stage,
  id: string,
  readings: readonly Reading[],
  name: string,
): Promise<void> => {
  const { page } = s.bench
  await page.goto(`/bench/${id}`)
  const fold = page.locator('#reading details').first()
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').first().click()
  for (const [i, [panel, of, values]] of readings.entries()) {
    if (i > 0) {
      await line(s, id, 'reading', { panel, of, values, probe: 'magnetic' })
      s.studio.clock.now += MINUTE
      continue
    }
    const form = page.locator('form:has(input[value=reading])')
    await form.locator('[name=panel]').selectOption(panel)
    await form.locator('[name=values]').fill(values)
    await form.locator(`input[name=of][value=${of}]`).check()
    await s.shoot(page, `${name}-typed`, { at: '#reading' })
    await press(page, form.getByRole('button').last())
  }
  await page.goto(`/bench/${id}`)
  const panels = page.locator('#panels details').first()
  if ((await panels.getAttribute('open')) === null) await panels.locator('summary').first().click()
  await s.shoot(page, `${name}-verdicts`, { at: '#panels', pieces: 2 })
}

export const polished = (s: Stage, id: string, panel: string, sequence: string, sets = '1') =>
  line(s, id, 'polished', { panel, sequence, sets, pad: 'soft foam' })

/** Something found on the way, and the question it leads to. */
export const findAndAsk = async (
  s: Stage,
  id: string,
  found: { readonly place: string; readonly text: string },
  extra: { readonly text: string; readonly minutes: number },
): Promise<void> => {
  const { page } = s.bench
  await page.goto(`/bench/${id}`)
  await page.locator('#findings summary').first().click()
  await page.locator('#f-found-place').fill(found.place)
  await page.locator('#f-found-text').fill(found.text)
  await s.shoot(page, 'finding', { at: '#findings' })
  const kept = await page.request.post(`${s.studio.origin}/bench/${id}/findings`, {
    multipart: { ...found },
    headers: { origin: s.studio.origin },
  })
  if (!kept.ok()) throw new Error(`the finding was answered ${kept.status()}`)
  await quietly(s, `/bench/${id}/extras`, { text: extra.text, minutes: String(extra.minutes) })
  await page.goto(`/bench/${id}`)
  await s.shoot(page, 'extra-asked', { at: '#findings' })
}

/** The customer's word on the extra, on their own page. */
export const answerExtra = async (s: Stage, id: string, decision: 'agree' | 'refuse') => {
  const { page } = s.customer
  await page.goto(`/e/${id}/quote`)
  await s.shoot(page, 'extra')
  const button = page.locator(`button[name=decision][value=${decision}]`)
  if ((await button.count()) > 0) await press(page, button)
}

/** What is left of the sheet, the checks, the hand-over; then the record on the customer's phone. */
export const handOver = async (
  s: Stage,
  id: string,
  given: { readonly mileage: string; readonly name: string; readonly open?: string },
): Promise<void> => {
  const { page } = s.bench
  await workUntil(s, id, null)
  await page.goto(`/bench/${id}/handover`)
  await s.shoot(page, 'handover-open-checks')
  for (const c of (await sheet(s, id)).checks)
    if (c.state === 'open') await line(s, id, 'checked', { check: c.id })
  await page.goto(`/bench/${id}/handover`)
  await page.locator('[name=mileage]').fill(given.mileage)
  await page.locator('[name=open]').fill(given.open ?? '')
  await page.locator('[name=name]').fill(given.name)
  await s.shoot(page, 'handover', { at: 'form[action$="/handover"]', above: 300 })
  await press(page, page.locator('form[action$="/handover"] button'))
  await s.customer.page.goto(`/e/${id}/record`)
  await s.shoot(s.customer.page, 'record', { pieces: 2 })
}
