import type { Words } from '../../words/render'

const SECOND = 1000
/** Felt through a pocket where the device can. */
const BUZZ = [400, 200, 400]

type Seen = { readonly left: number; readonly at: number }
const seen = new Map<string, Seen>()
const told = new Set<string>()

/**
 * Milliseconds left until a stored end. By the wall clock, so that a locked screen or a closed page
 * changes nothing; a clock put back meanwhile does not lengthen it, for the page's own clock went on.
 */
export const leftUntil = (ends: string, wall: number, steady: number): number => {
  const left = Number(ends) - wall
  const first = seen.get(ends) ?? { left, at: steady }
  seen.set(ends, first)
  return Math.min(left, first.left - (steady - first.at))
}

const two = (n: number): string => String(n).padStart(2, '0')

/** 83 000 ms as `1:23`, an hour and more as `1:02:03`. */
export const clockText = (ms: number): string => {
  const all = Math.floor(Math.abs(ms) / SECOND)
  const [h, m, s] = [Math.floor(all / 3600), Math.floor(all / 60) % 60, all % 60]
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`
}

/** Writes beside each time that runs how long it still has, and says once that it is over. */
export const tick = (root: ParentNode, words: Words): void => {
  for (const timer of root.querySelectorAll<HTMLElement>('[data-ends]')) {
    const place = timer.querySelector<HTMLElement>('[data-left]')
    const ends = timer.dataset.ends ?? ''
    if (!place) continue
    const left = leftUntil(ends, Date.now(), performance.now())
    if (left > 0) place.textContent = words.say('page.timer.left', { time: clockText(left) })
    else {
      place.textContent = words.say('page.timer.over', { time: clockText(left) })
      if (told.has(ends)) continue
      told.add(ends)
      place.setAttribute('role', 'alert')
      navigator.vibrate?.(BUZZ)
    }
  }
}
