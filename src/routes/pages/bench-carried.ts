import { sheetWords, wordsTag } from '../../pages/bench/sheet-words'
import { carriedOf } from '../acts/carrying'
import { openDesk } from '../acts/desk'
import { type Route, route } from '../route'
import { load, yearOf } from './bench-render'

/** What a device needs to show a sheet without a signal; the page itself works without either. */
export const benchCarriedRoutes: readonly Route[] = [
  route({
    id: 'page.bench.carried',
    face: 'page',
    method: 'GET',
    path: '/bench/:id/carried',
    rights: 'bench',
    summary: 'What a device carries of a job, as JSON.',
    answers: { 200: 'other' },
    load,
    act: ({ loaded, studio, now }) => ({
      status: 200,
      json: {
        carried: carriedOf(openDesk(loaded), loaded.estimates, studio, yearOf(now)),
        words: wordsTag(sheetWords(studio.words)),
      },
    }),
  }),
  route({
    id: 'page.bench.words',
    face: 'page',
    method: 'GET',
    path: '/bench/words/all',
    rights: 'bench',
    summary:
      'The sentences a sheet is shown with, as JSON; their tag tells a device whether it has them.',
    answers: { 200: 'other' },
    act: ({ studio }) => {
      const words = sheetWords(studio.words)
      return { status: 200, json: { tag: wordsTag(words), ...words } }
    },
  }),
]
