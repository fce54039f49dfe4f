import { existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
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

/**
 * The packaged browser, unpacked once on this machine. It is unpacked aside and moved in place whole,
 * so that a second process never starts a file that is still being written.
 */
const unpacked = async (): Promise<string> => {
  const home = join(tmpdir(), `jambside-chromium-${process.arch}`)
  const binary = join(home, 'chromium')
  if (existsSync(binary)) return binary
  const aside = mkdtempSync(join(tmpdir(), 'chromium-'))
  const before = process.env.TMPDIR
  process.env.TMPDIR = aside
  try {
    await sparticuz.executablePath()
  } finally {
    if (before === undefined) delete process.env.TMPDIR
    else process.env.TMPDIR = before
  }
  try {
    renameSync(aside, home)
  } catch (error) {
    rmSync(aside, { recursive: true, force: true })
    if (!existsSync(binary)) throw error
  }
  return binary
}

/** A real Chromium: the machine's own where there is one, else the packaged one. */
export const launchChromium = async (): Promise<Browser> => {
  const own = INSTALLED.find((path) => existsSync(path))
  const args = own
    ? []
    : sparticuz.args.filter((arg) => !UNWANTED.some((bad) => arg.startsWith(bad)))
  return chromium.launch({
    executablePath: own ?? (await unpacked()),
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
