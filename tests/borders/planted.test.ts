import { describe, expect, it } from 'vitest'
import { faultsOf } from './faults-of'

// Each breach is planted as a text; a rule that no longer finds it has stopped working.
const found = (path: string, source: string) => faultsOf({ path, source }).join('\n')

describe('a planted import is found', () => {
  it.each([
    ['src/kernel/x.ts', `import { y } from '../intake/y'`, 'kernel may not import intake'],
    ['src/intake/x.ts', `import type { Y } from '../quote/y'`, 'intake may not import quote'],
    ['src/quote/x.ts', `export { y } from '../jobsheet/y'`, 'quote may not import jobsheet'],
    ['src/quote/x.ts', `export * from '../words/y'`, 'quote may not import words'],
    ['src/jobsheet/x.ts', `const y = import('../docket/y')`, 'jobsheet may not import docket'],
    ['src/docket/x.ts', `type Y = import('../store/y').Y`, 'docket may not import store'],
    ['src/quote/a/x.ts', 'const y = import(`../../pages/y`)', 'quote may not import pages'],
    ['src/kernel/x.ts', `import { Hono } from 'hono'`, 'kernel may not import hono'],
    ['src/docket/x.ts', `import { eq } from 'drizzle-orm'`, 'docket may not import drizzle-orm'],
    ['src/intake/x.ts', `import { readFileSync } from 'node:fs'`, 'may not import node:fs'],
    ['src/quote/x.ts', `const fs = require('fs')`, 'quote may not import fs'],
    ['src/quote/x.ts', `import * as z from 'zod'`, 'quote may not import zod here'],
    ['src/kernel/x.ts', `const y = import(where)`, 'whose name is not a plain text'],
    ['src/words/x.ts', `import { y } from '../pages/y'`, 'words may not import pages'],
    ['src/store/x.ts', `import { y } from '../words/y'`, 'store may not import words'],
    ['src/pages/x.tsx', `import { y } from '../store/y'`, 'pages may not import store'],
    ['src/pages/x.tsx', `import * as z from 'zod'`, 'pages may not import zod'],
    ['src/routes/x.ts', `import { y } from '../app'`, 'routes may not import app'],
    ['src/routes/x.ts', `import { y } from '../store/file'`, 'only the entries choose a driver'],
    ['src/app.ts', `import { y } from './store/http'`, 'only the entries choose a driver'],
    ['src/app.ts', `import { y } from './worker'`, 'app may not import worker'],
    ['src/routes/x.ts', `import { createHash } from 'node:crypto'`, 'may not import node:crypto'],
    ['src/worker.ts', `import { Buffer } from 'node:buffer'`, 'may not import node:buffer'],
    ['src/client/x.ts', `import { y } from '../pages/studio/y'`, 'client may not import pages'],
    ['src/client/x.ts', `import { y } from '../routes/y'`, 'client may not import routes'],
    ['src/quote/x.ts', `import { y } from '../../tests/y'`, 'outside src'],
    ['src/other/x.ts', 'export const y = 1', 'no layer of this name'],
  ])('%s: %s', (path, source, fault) => {
    expect(found(path, source)).toContain(fault)
  })
})

describe('a planted word is found', () => {
  it.each([
    ['const y = new Date(0)', 'Date in'],
    ['const y = (d: Date) => d', 'Date in'],
    ['const { now } = Date', 'Date in'],
    ['const y = { Date }', 'Date in'],
    ['const y = Math.random()', 'Math.random'],
    [`const y = Math['random']()`, 'Math.random'],
    ['const { random } = Math', 'Math itself'],
    ['const y = Math.pow(2, 3)', 'Math.pow'],
    ['const y = Math[key](2)', 'Math itself'],
    ['const y = Math.hypot(2, 3)', 'Math.hypot'],
    ['const y = 2 ** 3', '** in'],
    ['let y = 2; y **= 3', '**= in'],
    ['const y = new Intl.NumberFormat()', 'Intl in'],
    ['const y = (5).toLocaleString()', '.toLocaleString'],
    ['const y = a?.toLocaleUpperCase()', '.toLocaleUpperCase'],
    ['const y = a.localeCompare(b)', '.localeCompare'],
    ['const y = process.env.HOME', 'process in'],
    ['const y = globalThis.Date', 'globalThis in'],
    ['const y = crypto.getRandomValues(x)', 'crypto in'],
    ['const y = performance.now()', 'performance in'],
    ['const y = import.meta.url', 'import.meta in'],
  ])('in the domain: %s', (source, fault) => {
    for (const folder of ['kernel', 'intake', 'quote', 'jobsheet', 'docket'])
      expect(found(`src/${folder}/x.ts`, source)).toContain(fault)
  })

  it.each([
    ['src/routes/x.ts', 'const y = process.env.PORT', 'process is read outside the rim'],
    ['src/pages/x.tsx', 'const y = import.meta.env', 'import.meta.env is read'],
    ['src/routes/x.ts', 'const y = Date.now()', 'Date.now'],
    ['src/words/x.ts', 'const y = new Date()', 'Date() without a time'],
    ['src/store/x.ts', 'const y = Math.random()', 'Math.random'],
    ['src/store/x.ts', 'await db.transaction(async () => {})', '.transaction('],
    ['src/routes/x.ts', `db['transaction']()`, '.transaction('],
    ['src/routes/x.ts', `import { z } from 'zod'`, 'imported as a whole'],
    ['tests/x.ts', `import { z } from 'zod'`, 'imported as a whole'],
    ['scripts/x.ts', `import z from 'zod'`, 'imported as a whole'],
    [
      'src/kernel/x.test.ts',
      `import * as z from 'zod/mini'; export { z } from 'zod'`,
      'as a whole',
    ],
  ])('%s: %s', (path, source, fault) => {
    expect(found(path, source)).toContain(fault)
  })
})

describe('a planted file is found', () => {
  it('that is too long, or a table that thinks', () => {
    const long = 'export const y = 1\n'.repeat(251).replaceAll('y', 'y')
    const distinct = long
      .split('\n')
      .map((line, i) => line.replace('y', `y${i}`))
      .join('\n')
    expect(found('src/kernel/x.ts', distinct)).toContain('251 lines')
    expect(found('src/words/en/risks.ts', distinct)).toBe('')
    expect(found('src/words/en/risks.ts', 'if (a) b()')).toContain('a table has no IfStatement')
  })

  it('that is not named after its question', () => {
    const at = (file: string, source: string) => found(`src/intake/questions/${file}.ts`, source)
    const one = `export const paintCode = question({ id: 'paint-code' })`
    expect(at('paint-code', one)).toBe('')
    expect(at('paint', one)).toContain('exports paintCode')
    expect(at('paint-code', 'export const paintCode = 1')).toContain('0 questions')
    expect(at('paint-code', `${one}; export const two = question({})`)).toContain('2 questions')
  })
})

it('and what is allowed is let through', () => {
  const allowed: readonly (readonly [string, string])[] = [
    ['src/docket/office-kinds.ts', `import * as z from 'zod'; import { y } from '../jobsheet/y'`],
    ['src/quote/x.ts', `import { y } from '../kernel/y'; const a = { Date: Math.exp(1) }; a.Date`],
    ['src/client/x.ts', `import { y } from '../pages/bench/y'; const now = Date.now()`],
    ['src/routes/x.ts', `import { y } from '../store/lines'; const d = new Date(0)`],
    ['src/node.ts', `import { y } from './store/file'; const p = process.env`],
    ['src/worker.ts', `import m from '../dist/assets/manifest.json' with { type: 'json' }`],
  ]
  expect(allowed.map(([path, source]) => found(path, source))).toEqual(allowed.map(() => ''))
})
