import { axeFaults, CONTROLS, sideways, small } from './axe'
import type { Visitor } from './visit'

export type Looked = { readonly page: string; readonly fault: string }
const NARROW = { width: 320, height: 640 } as const

/** Everything folded is opened, so that nothing hides from the checks. */
const unfoldAll = (v: Visitor): Promise<unknown> =>
  v.page.evaluate("for (const d of document.querySelectorAll('details')) d.open = true")

/** A page's faults as short lines, so that a failure names them all. */
export const told = (wrong: readonly Looked[]): readonly string[] =>
  wrong.map((w) => `${w.page}: ${w.fault}`)

/** One page in both schemes, at 320 px and with text twice as large; gives what is wrong with it. */
export const look = async (v: Visitor, name: string): Promise<readonly Looked[]> => {
  const { page } = v
  const wrong: Looked[] = []
  const note = (how: string, faults: readonly string[]): void => {
    for (const fault of faults) wrong.push({ page: `${name}, ${how}`, fault })
  }
  await unfoldAll(v)
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    note(colorScheme, await axeFaults(page, colorScheme === 'light' ? 'all' : 'colours'))
  }
  note('targets', await small(page, CONTROLS, 24))
  const size = page.viewportSize() ?? NARROW
  await page.setViewportSize(NARROW)
  note('at 320 px', await sideways(page))
  await page.setViewportSize({ width: 640, height: 800 })
  const larger = await page
    .addStyleTag({ content: 'html{font-size:200%!important}' })
    .catch(() => null)
  note('200 % text', larger ? await sideways(page) : ['the text could not be enlarged'])
  await larger?.evaluate((e) => (e as unknown as { remove: () => void }).remove())
  await page.setViewportSize(size)
  return wrong
}
