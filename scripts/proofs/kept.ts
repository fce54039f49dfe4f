import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Found } from './proof'

/** What a part found when it last ran, here or on another day. */
export type Kept = {
  readonly when: string
  readonly machine: string
  readonly versions: string
  /** 1 at full size. */
  readonly scale: number
  readonly seconds: number
  readonly found: Found
}
export type AllKept = Readonly<Record<string, Kept>>

/** The figures kept beside the page; none where there is no such file yet. */
export const readKept = (file: string): AllKept =>
  existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as AllKept) : {}

export const writeKept = (file: string, kept: AllKept): void => {
  mkdirSync(dirname(file), { recursive: true })
  writeFileSync(file, `${JSON.stringify(kept, null, 2)}\n`)
}
