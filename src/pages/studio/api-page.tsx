import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'

export type ApiRouteView = {
  readonly id: string
  readonly method: string
  readonly path: string
  readonly rights: string
  readonly summary: string
  readonly statuses: readonly number[]
}

export type ApiPageProps = {
  readonly frame: Frame
  readonly version: string
  readonly routes: readonly ApiRouteView[]
  readonly openApiHref: string
}

/** The API for people: every route with who may call it. The machine's copy is linked. */
export const ApiPage: FC<ApiPageProps> = ({ frame, version, routes, openApiHref }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.api')} wide>
      <section>
        <h1>{words.say('page.api')}</h1>
        <p>{words.say('page.api.lead', { version })}</p>
        <p>
          <a href={openApiHref}>{words.say('page.api.machine')}</a>
        </p>
      </section>
      <ol class="lines">
        {routes.map((r) => (
          <li id={r.id}>
            <p class="said code">
              {r.method} {r.path}
            </p>
            <p class="asked">{r.summary}</p>
            <p class="asked">
              {words.say(`page.rights.${r.rights}`)} · {r.statuses.join(', ')}
            </p>
          </li>
        ))}
      </ol>
    </Layout>
  )
}
