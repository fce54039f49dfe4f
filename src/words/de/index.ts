import type { Catalogue } from '../render'
import { germanErrors } from './errors'
import { germanPlaces } from './places'

/**
 * German, as far as it is right: places, buttons, states and what is wrong with an input. What is not
 * here is said in English as a whole sentence; none is put together from both.
 */
export const german: Catalogue = { ...germanPlaces, ...germanErrors }
