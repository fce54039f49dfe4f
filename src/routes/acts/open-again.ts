import type { State } from '../../docket/states'
import type { Desk } from './desk'

const BEFORE_THE_YES: readonly State[] = ['received', 'look-over', 'quoted', 'agreed', 'dated']

/** Questions a sent enquiry is open for: asked again by the studio, and what has become needed since. */
export const openAgain = (desk: Pick<Desk, 'docket' | 'replayed'>): readonly string[] =>
  BEFORE_THE_YES.includes(desk.docket.state)
    ? [...new Set([...desk.docket.askedAgain.map((a) => a.question), ...desk.replayed.needed])]
    : []
