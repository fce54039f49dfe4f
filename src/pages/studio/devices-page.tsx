import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary } from '../parts/error-summary'
import { Field, Select } from '../parts/field'
import { date } from '../parts/money-text'
import { PrivateLink } from '../parts/private-link'
import { type Refused, typed } from '../parts/refused'
import { SignOut } from '../parts/sign-out'
import { paths } from '../paths'

export type DeviceView = {
  readonly id: string
  readonly label: string
  readonly rights: 'owner' | 'bench'
  readonly since: string
  readonly lastSeen: string | null
  readonly here: boolean
}

export type DevicesPageProps = Refused & {
  readonly frame: Frame
  readonly devices: readonly DeviceView[]
  readonly once: string
  /** Who works here; choosing one gives the device their name and rights. */
  readonly team?: readonly { readonly name: string; readonly rights: 'owner' | 'bench' }[]
  /** A fresh one-use link for another device. */
  readonly link?: { readonly href: string; readonly qrSvg?: string }
}

/** Who may open the studio's pages, and how another device gets in. */
export const DevicesPage: FC<DevicesPageProps> = (p) => {
  const { frame, devices, once, link, team = [] } = p
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.devices')} scripts={['enhance.js', 'leave.js']}>
      <ErrorSummary words={words} errors={p.errors} />
      <section>
        <h1>{words.say('page.devices')}</h1>
        {link ? (
          <PrivateLink
            words={words}
            link={link.href}
            label={words.say('page.devices.link')}
            {...(link.qrSvg ? { qrSvg: link.qrSvg } : {})}
          />
        ) : null}
      </section>
      <ol class="lines">
        {devices.map((d) => (
          <li>
            <div class="line">
              <div>
                <p class="said">
                  {d.label} {d.here ? words.say('page.devices.here') : ''}
                </p>
                <p class="asked">
                  {words.say(`page.devices.${d.rights}`)}{' '}
                  {words.say('page.devices.since', { date: d.since })}{' '}
                  {d.lastSeen
                    ? words.say('page.devices.seen', { date: date(words, d.lastSeen) })
                    : ''}
                </p>
              </div>
              {d.here ? (
                <SignOut words={words} once={`${once}-${d.id}`} label={d.label} />
              ) : (
                <form method="post" action={paths.deviceRemoval(d.id)}>
                  <Once once={`${once}-${d.id}`} />
                  <Button quiet>
                    {words.say('page.devices.remove')}
                    <span class="unseen"> {d.label}</span>
                  </Button>
                </form>
              )}
            </div>
          </li>
        ))}
      </ol>
      {devices.some((d) => !d.here) ? (
        <section>
          <h2>{words.say('page.devices.others')}</h2>
          <p>{words.say('page.devices.others.lead')}</p>
          <form method="post" action={paths.deviceOthers}>
            <Once once={`${once}-others`} />
            <div class="acts">
              <Button quiet>{words.say('page.devices.others.button')}</Button>
            </div>
          </form>
        </section>
      ) : null}
      <section>
        <h2>{words.say('page.devices.add')}</h2>
        <p>{words.say('page.devices.add.lead')}</p>
        <form method="post" action={paths.devices}>
          <Once once={once} />
          {team.length > 0 ? (
            <Select
              name="person"
              label={words.say('page.devices.person')}
              options={[
                { value: '', label: words.say('page.devices.somebody') },
                ...team.map((t) => ({
                  value: t.name,
                  label: `${t.name} · ${words.say(`page.devices.${t.rights}`)}`,
                })),
              ]}
            />
          ) : null}
          <Field
            name="label"
            label={words.say('page.devices.label')}
            maxlength={60}
            {...typed(p, 'label')}
          />
          <Select
            name="rights"
            label={words.say('page.devices.rights')}
            options={[
              { value: 'bench', label: words.say('page.devices.bench') },
              { value: 'owner', label: words.say('page.devices.owner') },
            ]}
          />
          <div class="acts">
            <Button>{words.say('page.devices.make')}</Button>
          </div>
        </form>
      </section>
    </Layout>
  )
}
