import { join } from 'node:path'
import { darkCar } from '../dev/journeys/dark-car'
import { estateDay } from '../dev/journeys/estate-day'
import { familyCar } from '../dev/journeys/family-car'
import { signIn } from '../dev/journeys/office-acts'
import { saloon } from '../dev/journeys/saloon'
import { clearStage, type Scheme, type Stage, setStage } from '../dev/journeys/stage'
import { openStudio } from '../tests/browser/studio'
import { launchChromium } from '../tests/support/chromium'
import { runScript } from './run-script'

type Journey = {
  readonly name: string
  readonly act: (stage: Stage) => Promise<unknown>
  readonly looks: Readonly<Partial<Record<'customer' | 'owner' | 'bench', Scheme>>>
}

const JOURNEYS: readonly Journey[] = [
  { name: 'saloon', act: saloon, looks: { customer: { script: false } } },
  { name: 'dark-car', act: darkCar, looks: { bench: { dark: true } } },
  {
    name: 'estate-day',
    act: async (stage) => {
      await signIn(stage)
      await estateDay(stage)
    },
    looks: { bench: { script: false } },
  },
  { name: 'family-car', act: familyCar, looks: { bench: { script: false } } },
]

/** Acts the journeys in a real browser and keeps their pictures; `--only name`, `--into folder`. */
runScript(import.meta.url, async () => {
  const word = (name: string): string | undefined =>
    process.argv.includes(name) ? process.argv[process.argv.indexOf(name) + 1] : undefined
  const into = word('--into') ?? join('docs', 'journeys')
  const only = word('--only')
  const browser = await launchChromium()
  try {
    for (const { name, act, looks } of JOURNEYS) {
      if (only !== undefined && only !== name) continue
      const studio = await openStudio()
      try {
        const stage = await setStage(studio, browser, join(into, name), looks)
        await act(stage)
        await clearStage(stage)
        console.log(`${name}: done`)
      } finally {
        await studio.close()
      }
    }
  } finally {
    await browser.close()
  }
})
