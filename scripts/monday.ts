import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { handOf, leadOf, type Noted } from '../dev/monday/act'
import { MONDAY } from '../dev/monday/cars'
import { DECISIONS } from '../dev/monday/decisions'
import { sent, signIn } from '../tests/browser/quick'
import { openStudio, type Studio } from '../tests/browser/studio'
import { press, type Visitor, visit } from '../tests/browser/visit'
import { launchChromium } from '../tests/support/chromium'
import { runScript } from './run-script'

const HOUR = 3_600_000

/** The tenth rings while one works: taken down at the counter by the short form. */
const byPhone = async (owner: Visitor): Promise<Noted> => {
  const hand = handOf(owner, 'a call: small car, inside only')
  await owner.page.goto('/studio')
  await hand.follow('/studio/new')
  await hand.type('[name="contact.name"]', 'Tess Example')
  await hand.type('[name="contact.phone"]', '+353 1 555 0190')
  await hand.type('[name=plate]', '191D4444')
  await hand.choose('[name="body.value"]', 'city-car')
  await hand.tick('[name="services.value[]"][value=cabin]')
  await hand.tick('[name="dangers.none"]')
  await hand.tick('[name=consent]')
  await hand.press('Open it')
  const first = await leadOf(owner.page)
  await hand.press('Send it as it is')
  return hand.note(first, 'Taken down while talking, and sent before the call ended.')
}

const enquire = async (studio: Studio, browser: Parameters<typeof visit>[0]) => {
  const ids: string[] = []
  for (const { told } of MONDAY) {
    const customer = await visit(browser, studio)
    ids.push(await sent(customer, studio, told))
    await customer.page.context().close()
    studio.clock.now += HOUR
  }
  return ids
}

const written = (all: readonly Noted[]): string =>
  [
    ...all.map((n, i) =>
      [
        `### ${i + 1}. ${n.name}`,
        '',
        `- **The page led with:** ${n.first.join(' / ')}`,
        `- **Decision:** ${n.decision}`,
        `- **Done with:** ${n.clicks} presses from the list, ${n.typed} characters typed`,
        `- **Then:** ${n.result}`,
        '',
      ].join('\n'),
    ),
    `All ten: ${all.reduce((s, n) => s + n.clicks, 0)} presses, ${all.reduce((s, n) => s + n.typed, 0)} characters.`,
    '',
  ].join('\n')

/** Works ten enquiries through as a detailer on a phone; writes what was met into docs/monday-run.md. */
runScript(import.meta.url, async () => {
  const browser = await launchChromium()
  const studio = await openStudio()
  try {
    const ids = await enquire(studio, browser)
    const owner = await visit(browser, studio)
    await signIn(owner, studio)
    const all: Noted[] = []
    for (const [i, id] of ids.entries()) {
      const name = MONDAY[i]?.name ?? ''
      const decision = DECISIONS[name]
      if (!decision) throw new Error(`nothing was decided on: ${name}`)
      const hand = handOf(owner, name)
      await owner.page.goto('/studio')
      await hand.follow(`/studio/d/${id}`)
      const first = await leadOf(owner.page)
      await decision.act(hand)
      if ((await owner.page.locator('#faults').count()) > 0) throw new Error(`${name}: refused`)
      all.push(await hand.note(first, decision.what))
    }
    all.push(await byPhone(owner))
    await owner.page.goto('/studio')
    await press(owner.page, owner.page.getByRole('link', { name: /^Their turn/ }))
    const theirs = await owner.page.locator('.dockets > li').count()
    if (owner.trouble.length > 0) throw new Error(owner.trouble.join('\n'))
    writeFileSync(join('docs', 'monday-run.md'), `# The last run\n\n${written(all)}`)
    console.log(`${all.length} worked through; ${theirs} wait for the customer`)
  } finally {
    await browser.close()
    await studio.close()
  }
})
