import { openStudio } from '../../tests/browser/studio'
import { launchChromium } from '../../tests/support/chromium'
import { atMost, type BenchSection, shown } from './section'

const LINE = { latency: 150, downloadThroughput: 1_600_000 / 8, uploadThroughput: 750_000 / 8 }
const RUNS = 7
const GOAL_MS = 1000

type Seen = { readonly painted: number; readonly usable: number; readonly bytes: number }

/** When the first words stood there, when the page could be used (ms), and the bytes it took. */
const LOOK = `(() => {
  const [nav] = performance.getEntriesByType('navigation')
  const paint = performance.getEntriesByName('first-contentful-paint')[0]
  const painted = paint ? paint.startTime : 0
  return { painted, usable: Math.max(painted, nav.domContentLoadedEventEnd) }
})()`

const median = (of: readonly number[]): number => {
  const sorted = [...of].sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? 0
}

/** One page opened by a browser that has never been here, over the slow line. */
const open = async (
  browser: Awaited<ReturnType<typeof launchChromium>>,
  origin: string,
  path: string,
): Promise<Seen> => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } })
  try {
    const page = await context.newPage()
    const cdp = await context.newCDPSession(page)
    let bytes = 0
    await cdp.send('Network.enable')
    cdp.on('Network.loadingFinished', (e) => {
      bytes += e.encodedDataLength
    })
    await cdp.send('Network.emulateNetworkConditions', { offline: false, ...LINE })
    await page.goto(origin + path)
    await page.waitForLoadState('networkidle')
    const seen = await page.evaluate<{ painted: number; usable: number }>(LOOK)
    return { ...seen, bytes }
  } finally {
    await context.close()
  }
}

const run = async () => {
  const studio = await openStudio()
  const browser = await launchChromium()
  try {
    const seen: Seen[] = []
    // The first start of a browser's network is not the line's: it is thrown away.
    for (let n = 0; n <= RUNS; n += 1) {
      const one = await open(browser, studio.origin, '/')
      if (n > 0) seen.push(one)
    }
    const painted = median(seen.map((s) => s.painted))
    const usable = median(seen.map((s) => s.usable))
    const bytes = median(seen.map((s) => s.bytes))
    return {
      figures: { painted, usable, bytes, ...LINE },
      head: ['page', 'first words', 'usable', 'bytes'],
      rows: [['first page', shown(painted), shown(usable), String(bytes)]],
      targets: [
        atMost('first page usable at 1.6 Mbit/s and 150 ms', usable, GOAL_MS, 'ms'),
        atMost('first page with its assets', bytes, 30_000, 'bytes'),
      ],
      notes: [
        'Median of seven visits of a browser with an empty cache, over a line slowed by the browser itself.',
        'The browser adds the delay to each request; a new connection over a real line costs one more.',
      ],
    }
  } finally {
    await browser.close()
    await studio.close()
  }
}

/** How soon the first page can be used over a slow line. */
export const firstPageSection: BenchSection = {
  id: 'first-page',
  title: 'The first page over a slow line (milliseconds)',
  missing: () => null,
  run,
}
