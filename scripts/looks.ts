import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { createElement } from 'hono/jsx'
import type { Page } from 'playwright-core'
import { ComponentsPage } from '../dev/looks/components-page'
import { samplePages } from '../src/pages/samples'
import { toHtml } from '../src/pages/to-html'
import { launchChromium } from '../tests/support/chromium'
import { runScript } from './run-script'

const root = fileURLToPath(new URL('..', import.meta.url))

/** A small phone, a phone, a tablet, a laptop. */
const WIDTHS = [320, 390, 768, 1280] as const
const SCHEMES = ['light', 'dark'] as const

/** Pixels a page is wider than its window. */
const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)

/**
 * Every page, and the page of all parts, as pictures in four widths, two schemes and print, and as
 * files to open in a browser; says which is wider than its window.
 */
runScript(import.meta.url, async () => {
  const [, , only, into = join(root, 'dist', 'looks')] = process.argv
  await mkdir(into, { recursive: true })
  await writeFile(join(into, 'docket.css'), await readFile(join(root, 'src/pages/docket.css')))
  const assets = (name: string): string => name
  const pages = {
    parts: createElement(ComponentsPage as never, { assets }),
    ...samplePages(assets),
  }
  const browser = await launchChromium()
  let wide = 0
  for (const [name, page] of Object.entries(pages)) {
    if (only !== undefined && only !== 'all' && !only.split(',').includes(name)) continue
    const file = join(into, `${name}.html`)
    await writeFile(file, toHtml(page as never))
    for (const colorScheme of SCHEMES) {
      const tab = await browser.newPage({ colorScheme, javaScriptEnabled: true })
      for (const width of WIDTHS) {
        await tab.setViewportSize({ width, height: 800 })
        await tab.goto(`file://${file}`)
        await tab.screenshot({
          path: join(into, `${name}-${width}-${colorScheme}.png`),
          fullPage: true,
        })
        const over = await overflow(tab)
        if (over <= 0) continue
        wide += 1
        console.log(`${name} at ${width} (${colorScheme}) is ${over} px too wide`)
      }
      await tab.close()
    }
    const paper = await browser.newPage({ viewport: { width: 794, height: 1123 } })
    await paper.emulateMedia({ media: 'print' })
    await paper.goto(`file://${file}`)
    await paper.screenshot({ path: join(into, `${name}-print.png`), fullPage: true })
    await paper.close()
  }
  await browser.close()
  console.log(`${into}: ${wide} too wide`)
  if (wide > 0) process.exitCode = 1
})
