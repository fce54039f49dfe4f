/** What a job waits for before its car comes. */
export const WANTED = ['part', 'product', 'key', 'trade'] as const
export type WantedKind = (typeof WANTED)[number]

export const SUPPLY = ['wanted', 'on-its-way', 'in-hand'] as const
export type Supply = (typeof SUPPLY)[number]
