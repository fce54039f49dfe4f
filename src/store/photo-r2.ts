import { checkPhotoKey, type PhotoStore } from './photos-port'

/** The part of an R2 bucket binding that is used. */
export type PhotoBucket = {
  put(
    key: string,
    bytes: Uint8Array,
    options: { readonly httpMetadata: { readonly contentType: string } },
  ): Promise<unknown>
  get(key: string): Promise<{ arrayBuffer(): Promise<ArrayBuffer> } | null>
  delete(key: string): Promise<void>
  list(options: { readonly prefix: string; readonly cursor?: string }): Promise<{
    readonly objects: readonly { readonly key: string }[]
    readonly truncated: boolean
    readonly cursor?: string
  }>
}

/** Photos in an R2 bucket. */
export const openPhotoBucket = (bucket: PhotoBucket): PhotoStore => ({
  put: async (key, bytes, mime) => {
    await bucket.put(checkPhotoKey(key), bytes, { httpMetadata: { contentType: mime } })
  },
  get: async (key) => {
    const found = await bucket.get(checkPhotoKey(key))
    return found === null ? null : new Uint8Array(await found.arrayBuffer())
  },
  delete: (key) => bucket.delete(checkPhotoKey(key)),
  list: async (prefix = '') => {
    const keys: string[] = []
    let cursor: string | undefined
    do {
      const page = await bucket.list({ prefix, ...(cursor === undefined ? {} : { cursor }) })
      keys.push(...page.objects.map((object) => object.key))
      cursor = page.truncated ? page.cursor : undefined
    } while (cursor !== undefined)
    return keys.sort()
  },
})
