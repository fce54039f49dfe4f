import { existsSync } from 'node:fs'
import sparticuz from '@sparticuz/chromium'
import { type Browser, chromium } from 'playwright-core'

/** Flags of the packaged build that would hide faults or break a second context. */
const UNWANTED = [
  '--single-process',
  '--no-zygote',
  '--disable-web-security',
  '--disable-site-isolation-trials',
  '--disable-features',
]

const INSTALLED = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']

/** A real Chromium: the machine's own where there is one, else the packaged one. */
export const launchChromium = async (): Promise<Browser> => {
  const own = INSTALLED.find((path) => existsSync(path))
  const args = own
    ? []
    : sparticuz.args.filter((arg) => !UNWANTED.some((bad) => arg.startsWith(bad)))
  return chromium.launch({
    executablePath: own ?? (await sparticuz.executablePath()),
    headless: true,
    args: [
      ...args,
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
}
