import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { docketText } from './docket-text'
import { goldenCars } from './golden-cars'
import { estimateOf } from './studio'

const folder = join(import.meta.dirname, 'golden')
const update = process.env.UPDATE_GOLDEN === '1'

describe('whole estimates as text', () => {
  it.each(goldenCars)('$file reads as it did', ({ file, title, answers }) => {
    const path = join(folder, `${file}.txt`)
    const now = docketText(title, answers, estimateOf(answers))
    if (update) {
      mkdirSync(folder, { recursive: true })
      writeFileSync(path, now)
    }
    expect(now).toBe(readFileSync(path, 'utf8'))
  })

  it('keeps no text of a car that is gone', () => {
    expect(readdirSync(folder).sort()).toEqual(goldenCars.map((c) => `${c.file}.txt`).sort())
  })
})
