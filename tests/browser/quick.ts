import type { Studio } from './studio'
import { CONTACT, type Visitor, type Wanted } from './visit'

type Fields = readonly (readonly [name: string, value: string])[]

const at = (html: string, pattern: RegExp, what: string): string => {
  const found = pattern.exec(html)?.[1]
  if (found === undefined) throw new Error(`no ${what} on the page`)
  return found
}

/** Posts a form as the visitor's own browser would; gives the page it ends on. Throws on a refusal. */
export const post = async (
  { page }: Visitor,
  { origin }: Studio,
  path: string,
  fields: Fields,
): Promise<{ readonly url: string; readonly html: string }> => {
  const answer = await page.request.post(origin + path, {
    data: new URLSearchParams(fields.map(([k, v]) => [k, v])).toString(),
    headers: { 'content-type': 'application/x-www-form-urlencoded', origin },
  })
  const html = await answer.text()
  if (!answer.ok()) throw new Error(`${path} answered ${answer.status()}: ${html.slice(0, 2000)}`)
  return { url: answer.url(), html }
}

export const get = async ({ page }: Visitor, { origin }: Studio, path: string): Promise<string> => {
  const answer = await page.request.get(origin + path)
  if (!answer.ok()) throw new Error(`${path} answered ${answer.status()}`)
  return answer.text()
}

const fieldsFor = (question: string, html: string, wanted: Wanted): Fields => {
  const value = wanted[question]
  const form = html.slice(html.indexOf('/answers/'))
  if (value !== undefined && value !== 'unsure')
    return typeof value === 'string' ? [['value', value]] : value.map((v) => ['value[]', v])
  if (form.includes('name="skip"')) return [['skip', '1']]
  // With the signed time of the form, as a browser sends it along.
  const made = /name="made" value="([^"]+)"/.exec(form)?.[1] ?? ''
  if (question === 'contact') return [...Object.entries(CONTACT), ['made', made] as const]
  if (form.includes('name="unsure"')) return [['unsure', '1']]
  const radio = /type="radio" name="value" value="([^"]+)"/.exec(form)?.[1]
  return radio === undefined ? [] : [['value', radio]]
}

/** An enquiry answered as wanted, not sent yet; gives its docket. */
export const answered = async (v: Visitor, studio: Studio, wanted: Wanted): Promise<string> => {
  let { url, html } = await post(v, studio, '/e', [])
  const id = new URL(url).pathname.split('/')[2] ?? ''
  for (let n = 0; n < 60; n += 1) {
    const question = /action="[^"]*\/answers\/([^"]+)"/.exec(html)?.[1]
    if (question === undefined) return id
    const path = `/e/${id}/answers/${question}`
    // A person takes a while to type; who is done at once waits apart.
    if (question === 'contact') studio.clock.now += 20_000
    ;({ url, html } = await post(v, studio, path, fieldsFor(question, html, wanted)))
  }
  throw new Error('the questions do not end')
}

/** An enquiry that was sent. */
export const sent = async (v: Visitor, studio: Studio, wanted: Wanted): Promise<string> => {
  const id = await answered(v, studio, wanted)
  await post(v, studio, `/e/${id}/submission`, [['consent', '1']])
  return id
}

export const signIn = async (v: Visitor, studio: Studio, rights: 'owner' | 'bench' = 'owner') => {
  const link = await studio.signInLink(rights)
  await post(v, studio, '/studio/sign-in', [['code', link]])
}

export const revOf = (html: string): string =>
  at(html, /name="rev" value="(\d+)"/, 'revision of the docket')

/** Saves the next revision as it stands and sends it; gives the customer's link. */
export const quoted = async (owner: Visitor, studio: Studio, id: string): Promise<string> => {
  const path = `/studio/d/${id}`
  const rev = revOf(await get(owner, studio, path))
  const fields: Fields = [
    ['rev', rev],
    ['act', 'save'],
  ]
  const { html } = await post(owner, studio, `${path}/revisions`, fields)
  const sending = at(html, /action="([^"]+\/sending)"/, 'revision to send')
  const done = await post(owner, studio, sending, [['rev', revOf(html)]])
  return at(done.html, /(http:\/\/[^\s<]+\/l\/[^\s<]+)/, 'link in the message')
}

/** The customer says yes to the quote that was sent. */
export const agreed = async (v: Visitor, studio: Studio, id: string): Promise<void> => {
  const html = await get(v, studio, `/e/${id}/quote`)
  const notes = [...html.matchAll(/name="acknowledged\[\]" value="([^"]+)"/g)].map(
    (m) => m[1] ?? '',
  )
  await post(v, studio, `/e/${id}/quote/decision`, [
    ['decision', 'accept'],
    ['revision', at(html, /name="revision" value="(\d+)"/, 'revision of the quote')],
    ['name', CONTACT.name],
    // Small extra work need not be asked about.
    ['extrasLimit', '50'],
    ...notes.map((n) => ['acknowledged[]', n] as const),
  ])
}

export const dated = async (owner: Visitor, studio: Studio, id: string): Promise<void> => {
  const rev = revOf(await get(owner, studio, `/studio/d/${id}`))
  await post(owner, studio, `/studio/d/${id}/date`, [
    ['rev', rev],
    ['start', '2026-10-05'],
    ['startTime', '08:30'],
    // Cars of one test file stand beside each other; whether they may is looked at elsewhere.
    ['anyway', '2026-10-05 08:30'],
  ])
}

/** From the first answer to a fixed day. */
export const toTheBench = async (
  customer: Visitor,
  owner: Visitor,
  studio: Studio,
  wanted: Wanted,
): Promise<string> => {
  const id = await sent(customer, studio, wanted)
  await quoted(owner, studio, id)
  await agreed(customer, studio, id)
  await dated(owner, studio, id)
  return id
}
