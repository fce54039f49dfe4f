import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { cookieOf } from './stages'

const LINK =
  '/?year=1998&body=estate&services=paint,cabin&spacers=yes&mileage=88000&utm_source=x' +
  '&size=%3Cscript%3Ealert(1)%3C/script%3E&wheels=round&contact=Robin&%3Cb%3E=1&year-of=2'

describe.each(RUNTIMES)('beginning on %s', (runtime) => {
  let world: World
  let call: Caller
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
  })
  afterAll(() => world.close())
  const post = (fields: readonly (readonly [string, string])[], cookie = '') =>
    call('POST', '/e', {
      body: new URLSearchParams(fields.map(([k, v]) => [k, v])),
      headers: { 'sec-fetch-site': 'same-origin', cookie },
    })

  it('shows what came with the link, names what is no answer, and takes it when confirmed', async () => {
    const { text } = await call('GET', LINK)
    const hidden = [...text.matchAll(/name="(with:[^"]+)" value="([^"]*)"/g)].map(
      ([, name = '', value = '']) => [name, value] as const,
    )
    expect(hidden).toEqual([
      ['with:year', '1998'],
      ['with:body', 'estate'],
      ['with:services', 'paint,cabin'],
      ['with:spacers', 'yes'],
      ['with:mileage', '88000'],
    ])
    expect(text).toContain(
      '5 parts of the link are no answers we can use, and left out: size, wheels, contact, &lt;b&gt;, year-of.',
    )
    expect(text).not.toContain('<script>alert')
    expect(text).not.toContain('utm_source')

    const tampered = ['with:contact', 'Robin'] as const
    const begun = await post([...hidden, tampered, ['with:year', '3000']])
    expect(begun.status).toBe(303)
    const page = await call('GET', begun.headers.get('location') ?? '', {
      headers: { cookie: cookieOf(begun.headers) },
    })
    expect(page.text).toContain('1998')
    expect(page.text).not.toContain('3000')
    expect(page.text).not.toContain('Robin')
  })

  it('takes the same answers over the API, and refuses wrong ones by name', async () => {
    const good = {
      year: { value: 1998 },
      body: { value: 'estate' },
      services: { value: ['paint'] },
    }
    const made = await call('POST', '/api/v1/enquiries', { json: { answers: good } })
    expect(made.status).toBe(201)
    const { id, key, rev, question } = made.json
    const found = (await call('GET', `/api/v1/enquiries/${id}`, { key })).json
    expect(found.rev).toBe(rev)
    expect(found.question).toEqual(question)
    expect(Object.keys(good)).not.toContain(question.id)
    for (const [answers, pointer] of [
      [{ year: { value: 'soon' } }, '/answers/year/value'],
      [{ year: { value: 3000 } }, '/answers/year/value'],
      [{ nothing: { value: 1 } }, '/answers/nothing'],
      [{ contact: { value: { name: 'Robin Ash', phone: '+353 1 555 0142' } } }, '/answers/contact'],
    ] as const) {
      const refused = await call('POST', '/api/v1/enquiries', { json: { answers } })
      expect(refused.status).toBe(422)
      expect(refused.json.errors[0].pointer).toBe(pointer)
    }
  })

  it('lists the enquiries of this browser side by side, and nobody else’s', async () => {
    expect((await call('GET', '/')).text).not.toContain('Yours in this browser')
    const [one, two] = [
      await post([['with:body', 'estate']]),
      await post([['with:body', 'saloon']]),
    ]
    const other = (await post([])).headers.get('location') ?? 'none'
    const both = [one, two].map((a) => cookieOf(a.headers)).join('; ')
    const { text } = await call('GET', '/', { headers: { cookie: both } })
    for (const made of [one, two]) expect(text).toContain(`href="${made.headers.get('location')}"`)
    expect(text).toMatch(/Estate/i)
    expect(text).not.toContain(other)
    // A docket's name with somebody's wrong key is nothing.
    const forged = cookieOf(one.headers).replace(/=.{6}/, '=AAAAAA')
    expect((await call('GET', '/', { headers: { cookie: forged } })).text).not.toContain(
      'Yours in this browser',
    )
    const keys = both.split('; ').map((c) => c.split('=')[1] ?? 'none')
    for (const key of keys) {
      expect(text).not.toContain(key)
      expect(world.logs().join('\n')).not.toContain(key)
    }
  })
})
