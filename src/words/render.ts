import type { Phrase } from '../intake/question'

/** Sentences by key. `{name}` is a parameter, `{name:format}` a formatted one, `{n|one|many}` a plural. */
export type Catalogue = Readonly<Record<string, string>>

export type Formats = {
  readonly language: string
  readonly locale: string
  readonly currency: string
  /** Decimal places of the currency's minor unit (ISO 4217). */
  readonly exponent: number
}

export type Words = {
  readonly formats: Formats
  readonly has: (key: string) => boolean
  readonly say: (phrase: Phrase | string, params?: Phrase['params']) => string
  /** The sentences of the keys wanted, as one catalogue to be taken elsewhere. */
  readonly slice: (wanted: (key: string) => boolean) => Catalogue
}

type Value = string | number | readonly string[]

const hours = (minutes: number, say: (key: string, n: number) => string): string => {
  const whole = Math.round(minutes)
  const h = Math.floor(whole / 60)
  const m = whole % 60
  if (h === 0) return say('format.minutes', m)
  return m === 0 ? say('format.hours', h) : `${say('format.hours', h)} ${say('format.minutes', m)}`
}

const scaled = (minor: number, exponent: number): number => {
  let unit = 1
  for (let i = 0; i < exponent; i += 1) unit *= 10
  return minor / unit
}

const makeIntl = (formats: Formats) => {
  const number = new Intl.NumberFormat(formats.locale, { maximumFractionDigits: 1 })
  const money = new Intl.NumberFormat(formats.locale, {
    style: 'currency',
    currency: formats.currency,
    minimumFractionDigits: formats.exponent,
    maximumFractionDigits: formats.exponent,
  })
  const whole = new Intl.NumberFormat(formats.locale, {
    style: 'currency',
    currency: formats.currency,
    maximumFractionDigits: 0,
  })
  const list = new Intl.ListFormat(formats.locale, { type: 'conjunction' })
  const day = new Intl.DateTimeFormat(formats.locale, {
    weekday: 'short',
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  })
  const percent = new Intl.NumberFormat(formats.locale, { style: 'percent' })
  return { number, money, whole, list, day, percent }
}

const made = new Map<string, ReturnType<typeof makeIntl>>()
/** A studio has one locale and one currency; more come only from old quotes. */
const MOST_MADE = 32

/** The engine's formatters, made once: making them took a millisecond of every request. */
const intlOf = (formats: Formats): ReturnType<typeof makeIntl> => {
  const key = `${formats.locale} ${formats.currency} ${formats.exponent}`
  const known = made.get(key)
  if (known !== undefined) return known
  if (made.size >= MOST_MADE) made.clear()
  const now = makeIntl(formats)
  made.set(key, now)
  return now
}

/**
 * Binds catalogues (first one wins) to a locale. A missing key throws: a page never shows a bare
 * key, and a test walks every key the domain can emit.
 */
export const words = (catalogues: readonly Catalogue[], formats: Formats): Words => {
  const find = (key: string): string | undefined => {
    for (const c of catalogues) if (Object.hasOwn(c, key)) return c[key]
    return undefined
  }
  const { number, money, whole, list, day, percent } = intlOf(formats)
  const formatters: Readonly<Record<string, (v: Value) => string>> = {
    money: (v) => money.format(scaled(Number(v), formats.exponent)),
    round: (v) => whole.format(scaled(Number(v), formats.exponent)),
    hours: (v) => hours(Number(v), (key, n) => say(key, { n })),
    um: (v) => `${number.format(Number(v))}\u00a0µm`,
    percent: (v) => percent.format(Number(v)),
    date: (v) => day.format(new Date(`${String(v)}T00:00:00Z`)),
    year: (v) => String(v),
    clock: (v) => {
      const m = Number(v)
      return `${String(Math.floor(m / 60)).padStart(2, '0')}:${String(m % 60).padStart(2, '0')}`
    },
    /** A list of keys, each rendered, then joined as the language joins. */
    words: (v) => list.format((Array.isArray(v) ? v : [String(v)]).map((k) => say(k))),
    key: (v) => say(String(v)),
  }
  const plain = (v: Value): string =>
    typeof v === 'number' ? number.format(v) : Array.isArray(v) ? list.format(v) : String(v)

  const say = (phrase: Phrase | string, params?: Phrase['params']): string => {
    const key = typeof phrase === 'string' ? phrase : phrase.key
    const given: Phrase['params'] =
      params ?? (typeof phrase === 'string' ? {} : phrase.params) ?? {}
    const template = find(key)
    if (template === undefined) throw new Error(`No words for ${key}`)
    return template.replace(/\{([^{}]+)\}/g, (_all, inner: string) => {
      if (inner.includes('|')) {
        const [name = '', one = '', many = ''] = inner.split('|')
        const n = Number(given[name])
        return (n === 1 ? one : many).replaceAll('#', number.format(n))
      }
      const [name = '', format] = inner.split(':')
      const v = given[name]
      if (v === undefined) throw new Error(`No ${name} for ${key}`)
      if (format === undefined) return plain(v)
      const f = formatters[format]
      if (f === undefined) throw new Error(`No format ${format} in ${key}`)
      return f(v)
    })
  }
  const slice = (wanted: (key: string) => boolean): Catalogue =>
    Object.fromEntries(
      [...catalogues]
        .reverse()
        .flatMap((c) => Object.entries(c))
        .filter(([key]) => wanted(key)),
    )
  return { formats, has: (key) => find(key) !== undefined, say, slice }
}
