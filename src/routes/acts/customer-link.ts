import { renderSVG } from 'uqr'
import type { Call, Load } from '../route'
import { CUSTOMER_KEY_MS } from './enquiry'
import { todayOf } from './estimating'
import { freshLink } from './fresh-link'

/** A private link made on request: the address, the same as a code, and the last day it opens. */
export const customerLink = async (
  call: Pick<Call<unknown, unknown, Load>, 'deps' | 'origin' | 'now' | 'studio'>,
  docket: string,
  label: string,
) => {
  const { link, access } = await freshLink(call, docket, label)
  return {
    link,
    qrSvg: renderSVG(link, { border: 2 }),
    until: todayOf(call.studio, call.now + CUSTOMER_KEY_MS),
    writes: [access],
  }
}
