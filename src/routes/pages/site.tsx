import { renderSVG } from 'uqr'
import { FreshLinkPage } from '../../pages/studio/fresh-link'
import { SitePage } from '../../pages/studio/site-page'
import { customerLink } from '../acts/customer-link'
import { deskLoad, openDesk } from '../acts/desk'
import { type Route, route } from '../route'
import { frameOf, page } from './page'

export const siteRoutes: readonly Route[] = [
  route({
    id: 'page.site',
    face: 'page',
    method: 'GET',
    path: '/studio/site',
    rights: 'owner',
    summary: 'The link and the code for the studio’s own site.',
    answers: { 200: 'other' },
    act: (call) => {
      const link = `${call.origin}/`
      return page(
        <SitePage
          frame={frameOf(call)}
          link={link}
          qrSvg={renderSVG(link, { border: 2 })}
          example={`${link}?body=estate&services=paint,cabin`}
        />,
      )
    },
  }),
  route({
    id: 'page.docket.link',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/link',
    rights: 'owner',
    summary: 'A new private link for a customer whose own is old or lost.',
    body: 'form',
    answers: { 200: 'other' },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: async (call) => {
      const { id, docket } = openDesk(call.loaded)
      const { writes, ...made } = await customerLink(call, id, 'issued again')
      const who = docket.reference ? { who: docket.reference } : {}
      return { ...page(<FreshLinkPage frame={frameOf(call, who)} id={id} {...made} />), writes }
    },
  }),
]
