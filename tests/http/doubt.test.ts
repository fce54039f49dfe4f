import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { LIMITS } from '../../src/routes/acts/doubting'
import { callerOf } from '../support/caller'
import { OWNER_KEY, openWorld, type World } from '../support/world'

const FORM = { 'content-type': 'application/x-www-form-urlencoded' }
const NOW = 'the form as it was shown'

type Filled = Readonly<Record<string, string>>

describe('an enquiry that may not be from a person', () => {
  let world: World
  beforeAll(async () => {
    world = await openWorld({ runtime: 'node' })
  })
  afterAll(() => world.close())

  const wait = (ms: number) => {
    if (world.clock) world.clock.now += ms
  }
  const post = (path: string, fields: Filled, cookie = '') =>
    world.fetch(path, {
      method: 'POST',
      headers: { ...FORM, 'sec-fetch-site': 'same-origin', ...(cookie ? { cookie } : {}) },
      body: new URLSearchParams(fields),
    })

  /** Answers by plain forms without a script, as a browser without one does, up to the contact. */
  const untilContact = async (pause: number) => {
    const opened = await post('/e', {})
    const id = opened.headers.get('location')?.split('/')[2] ?? ''
    const cookie = opened.headers.get('set-cookie')?.split(';')[0] ?? ''
    for (;;) {
      const html = await (await world.fetch(`/e/${id}`, { headers: { cookie } })).text()
      const question = /action="[^"]*\/answers\/([^"]+)"/.exec(html)?.[1] ?? ''
      if (question === 'contact') return { id, cookie, html }
      const form = html.slice(html.indexOf('/answers/'))
      const radio = /type="radio" name="value" value="([^"]+)"/.exec(form)?.[1]
      wait(pause)
      const given: Filled =
        question === 'dangers'
          ? {}
          : form.includes('name="skip"')
            ? { skip: '1' }
            : question === 'services'
              ? { 'value[]': 'cabin' }
              : form.includes('name="unsure"') && radio === undefined
                ? { unsure: '1' }
                : { value: radio ?? '2015' }
      const done = await post(`/e/${id}/answers/${question}`, given, cookie)
      expect([question, done.status]).toEqual([question, 303])
    }
  }

  /** Fills the contact form and sends; nothing is refused, whoever it was. */
  const sendAs = async (given: {
    readonly pause: number
    readonly typing: number
    readonly trap?: string
    readonly made?: string
  }) => {
    const { id, cookie, html } = await untilContact(given.pause)
    const shown = /name="made" value="([^"]+)"/.exec(html)?.[1] ?? ''
    expect(html).toMatch(/name="fax"[^>]*value=""/)
    wait(given.typing)
    const made = given.made === NOW ? shown : given.made
    const contact = await post(
      `/e/${id}/answers/contact`,
      {
        name: 'Robin Ash',
        email: 'robin@example.test',
        ...(made === undefined ? {} : { made }),
        fax: given.trap ?? '',
      },
      cookie,
    )
    expect(contact.status).toBe(303)
    const sent = await post(`/e/${id}/submission`, { consent: '1' }, cookie)
    expect([sent.status, sent.headers.get('location')]).toEqual([303, `/e/${id}/sent`])
    return id
  }

  const listed = async (turn: string) => {
    const call = callerOf(world)
    const { json } = await call('GET', `/api/v1/dockets?turn=${turn}&limit=100`, { key: OWNER_KEY })
    return json.dockets as readonly { id: string; rev: number; doubtful: boolean }[]
  }
  const turnOf = async (id: string) => {
    for (const turn of ['ours', 'apart', 'theirs'])
      if ((await listed(turn)).some((d) => d.id === id)) return turn
    return 'nowhere'
  }

  const human = { pause: 900, typing: 15_000, made: NOW }
  it.each<[string, Parameters<typeof sendAs>[0], string]>([
    ['a person without scripts, at a person’s speed', human, 'ours'],
    ['a person who stayed away for six days', { ...human, typing: 6 * 86_400_000 }, 'ours'],
    ['a hidden field that a password manager filled', { ...human, trap: '555 0142' }, 'apart'],
    ['all done in half a second', { ...human, pause: 20, typing: 100, trap: 'x' }, 'apart'],
    ['a form sent at once, no hidden field', { ...human, typing: LIMITS.formMs - 1 }, 'apart'],
    ['the same at the limit', { ...human, typing: LIMITS.formMs }, 'ours'],
    ['answers without a form that was opened', { ...human, made: undefined as never }, 'apart'],
    ['a time nobody signed', { ...human, made: `1.${'0'.repeat(64)}` }, 'apart'],
    ['a time that is no time', { ...human, made: '<script>' }, 'apart'],
    ['a form from last month', { ...human, typing: LIMITS.oldMs + 1 }, 'apart'],
  ])('%s', async (_who, given, turn) => {
    const { made, ...rest } = given
    const id = await sendAs(made === undefined ? rest : given)
    expect(await turnOf(id)).toBe(turn)
  })

  it('a signed time of another docket does not count', async () => {
    const other = await untilContact(900)
    const made = /name="made" value="([^"]+)"/.exec(other.html)?.[1] ?? ''
    const id = await sendAs({ ...human, made })
    expect(await turnOf(id)).toBe('apart')
  })

  it('waits apart until the studio says that it is genuine, on the page or by a program', async () => {
    const call = callerOf(world)
    const [one = '', two = ''] = [
      await sendAs({ ...human, trap: 'x' }),
      await sendAs({ ...human, trap: 'x' }),
    ]
    const key = { authorization: `Bearer ${OWNER_KEY}` }
    const page = await (await world.fetch(`/studio/d/${one}`, { headers: key })).text()
    expect(page).toContain('A field that people do not see was filled in.')
    const ours = await (await world.fetch('/studio', { headers: key })).text()
    expect(ours).not.toContain(one)
    expect(ours).toContain('/studio?turn=apart')
    const apart = await (await world.fetch('/studio?turn=apart', { headers: key })).text()
    expect(apart).toContain(one)

    const rev = /name="rev" value="(\d+)"/.exec(page)?.[1] ?? ''
    const said = await world.fetch(`/studio/d/${one}/genuine`, {
      method: 'POST',
      headers: { ...FORM, ...key },
      body: new URLSearchParams({ rev }),
    })
    expect(said.status).toBe(303)
    const found = (await listed('apart')).find((d) => d.id === two)
    expect(found?.doubtful).toBe(true)
    const told = await call('POST', `/api/v1/dockets/${two}/genuine`, {
      key: OWNER_KEY,
      match: found?.rev,
      json: {},
    })
    expect([told.status, told.json.state]).toEqual([200, 'received'])
    expect([await turnOf(one), await turnOf(two)]).toEqual(['ours', 'ours'])
    // Once said, it is not doubted again, and there is nothing more to say.
    const again = await call('POST', `/api/v1/dockets/${two}/genuine`, {
      key: OWNER_KEY,
      match: told.json.rev,
      json: {},
    })
    expect(again.status).toBe(409)
  })

  it('a site that asks by itself may say that it doubts; a program that does not is not doubted', async () => {
    const call = callerOf(world)
    const sendBy = async (body: Readonly<Record<string, unknown>>) => {
      const { json } = await call('POST', '/api/v1/enquiries', { json: {} })
      const { id, key } = json
      for (let q = json.question; q !== null; ) {
        const value =
          q.kind === 'multi'
            ? []
            : q.kind === 'contact'
              ? { name: 'Robin Ash', email: 'robin@example.test' }
              : q.kind === 'choice'
                ? q.options[0].value
                : null
        const given = q.optional ? { value: null } : q.unsureAllowed ? { unsure: true } : { value }
        const done = await call('PUT', `/api/v1/enquiries/${id}/answers/${q.id}`, {
          key,
          json: given,
        })
        expect([q.id, done.status]).toEqual([q.id, 200])
        q = done.json.question
      }
      const sent = await call('POST', `/api/v1/enquiries/${id}/submission`, { key, json: body })
      expect([sent.status, sent.json.state]).toEqual([201, 'received'])
      return id as string
    }
    expect(await turnOf(await sendBy({ consent: true }))).toBe('ours')
    expect(await turnOf(await sendBy({ consent: true, doubtful: false }))).toBe('ours')
    expect(await turnOf(await sendBy({ consent: true, doubtful: true }))).toBe('apart')
  })
})
