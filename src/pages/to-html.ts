import type { Child } from 'hono/jsx'

/** A page component as a whole document. Components fetch nothing, so rendering is never async. */
export const toHtml = (page: Child): string => {
  const text = String(page)
  if (text === '[object Promise]') throw new Error('A page component must not be async')
  return `<!doctype html>${text}`
}
