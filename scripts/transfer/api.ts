/** A studio somewhere, reached with its owner's key. */
export type Studio = {
  readonly get: (path: string) => Promise<Response>
  readonly send: (
    method: 'POST' | 'PUT',
    path: string,
    body: string | Uint8Array<ArrayBuffer>,
    mime: string,
  ) => Promise<Response>
}

const said = async (response: Response): Promise<string> =>
  `${response.status} ${(await response.text()).slice(0, 2000)}`

/** Opens a studio at an address. Every answer but a good one throws, with what was said. */
export const studioAt = (address: string, key: string): Studio => {
  const ask = async (path: string, init: RequestInit): Promise<Response> => {
    const response = await fetch(new URL(path, address), {
      ...init,
      redirect: 'error',
      headers: { ...init.headers, authorization: `Bearer ${key}` },
    })
    if (!response.ok) throw new Error(`${init.method} ${path}: ${await said(response)}`)
    return response
  }
  return {
    get: (path) => ask(path, { method: 'GET' }),
    send: (method, path, body, mime) =>
      ask(path, { method, body, headers: { 'content-type': mime } }),
  }
}

/** The address and key a script was told: `--at=…` or PUBLIC_URL, and OWNER_KEY. */
export const toldStudio = (args: readonly string[]): Studio => {
  const at = args.find((a) => a.startsWith('--at='))?.slice(5) ?? process.env.PUBLIC_URL
  const address = at ?? `http://127.0.0.1:${process.env.PORT ?? '8787'}`
  const key = process.env.OWNER_KEY
  if (!key) throw new Error('OWNER_KEY is not set: the server and this script need the same one')
  return studioAt(address, key)
}
