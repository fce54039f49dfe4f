import * as z from 'zod'
import { adjustment } from '../../docket/kinds'

/** Adjustments as the contract takes them. */
export const adjustments = z.array(adjustment).max(200)
