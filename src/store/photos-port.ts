/** Where the bytes of photos are. Keys are made by us: see `isPhotoKey`. */
export interface PhotoStore {
  /** Keeps bytes under a key, replacing what was there. */
  put(key: string, bytes: Uint8Array, mime: string): Promise<void>
  /** The bytes under a key, null for none. */
  get(key: string): Promise<Uint8Array | null>
  /** Removes what is under a key; nothing there is no error. */
  delete(key: string): Promise<void>
  /** Every key that starts with `prefix`, sorted. */
  list(prefix?: string): Promise<readonly string[]>
}

// An id drawn by chance may begin with `_` or `-`.
const part = '[A-Za-z0-9_-]+'
const photoKey = new RegExp(`^${part}(/${part})*(\\.[a-z0-9]+)?$`)

/** Letters, digits, `_` and `-` in parts joined by `/`, with an ending: nothing that leaves a folder. */
export const isPhotoKey = (key: string): boolean => key.length <= 200 && photoKey.test(key)

/** Throws on a key that is not one of ours. */
export const checkPhotoKey = (key: string): string => {
  if (!isPhotoKey(key)) throw new Error(`not a photo key: ${JSON.stringify(key)}`)
  return key
}
