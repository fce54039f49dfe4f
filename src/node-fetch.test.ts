import { gunzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { packed } from './node-fetch'

const PAGE = `<!doctype html>${'<p>The same words again. '.repeat(60)}`
const html = (headers: Record<string, string> = {}): Response =>
  new Response(PAGE, { headers: { 'content-type': 'text/html; charset=utf-8', ...headers } })
const asking = (encodings: string | null): Request =>
  new Request('http://studio.test/', { headers: encodings ? { 'accept-encoding': encodings } : {} })

describe('packing an answer', () => {
  // Which codings a caller takes: RFC 9110, 12.5.3.
  it.each([
    ['gzip', true],
    ['br, gzip, deflate', true],
    ['gzip;q=0.5, identity', true],
    ['gzip;q=1.0', true],
    ['gzip;q=0', false],
    ['gzip;q=0.000', false],
    ['br', false],
    ['identity', false],
    [null, false],
  ])('for a caller that takes %s: %s', async (encodings, does) => {
    const answer = await packed(asking(encodings), html())
    expect(answer.headers.get('content-encoding')).toBe(does ? 'gzip' : null)
    expect(answer.headers.get('vary')).toBe('accept-encoding')
    const bytes = new Uint8Array(await answer.arrayBuffer())
    const text = does ? gunzipSync(bytes).toString() : new TextDecoder().decode(bytes)
    expect(text).toBe(PAGE)
    expect(bytes.byteLength < PAGE.length / 4).toBe(does)
  })

  it.each([
    ['an answer with an ETag', html({ etag: '"7"' })],
    ['one packed before', html({ 'content-encoding': 'br' })],
    ['a picture', html({ 'content-type': 'image/png' })],
    ['none at all', new Response(null, { status: 303, headers: { location: '/e' } })],
  ])('leaves %s as it is', async (_, response) => {
    expect(await packed(asking('gzip'), response)).toBe(response)
  })

  it('keeps status, cookies and policy', async () => {
    const page = html({ 'content-security-policy': "default-src 'none'" })
    page.headers.append('set-cookie', 'a=1; Path=/')
    page.headers.append('set-cookie', 'b=2; Path=/')
    const refused = new Response(page.body, { status: 422, headers: page.headers })
    const answer = await packed(asking('gzip'), refused)
    expect(answer.status).toBe(422)
    expect(answer.headers.getSetCookie()).toEqual(['a=1; Path=/', 'b=2; Path=/'])
    expect(answer.headers.get('content-security-policy')).toBe("default-src 'none'")
  })
})
