import { promisify } from 'node:util'
import { type Entry, fromBuffer, open, type ZipFile } from 'yauzl'

const bytesOf = async (zip: ZipFile, entry: Entry): Promise<Uint8Array<ArrayBuffer>> => {
  const stream = await promisify<Entry, NodeJS.ReadableStream>(zip.openReadStream.bind(zip))(entry)
  const chunks: Buffer[] = []
  for await (const chunk of stream) chunks.push(chunk as Buffer)
  return new Uint8Array(Buffer.concat(chunks))
}

async function* entriesOf(zip: ZipFile): AsyncGenerator<Entry> {
  const waiting: (Entry | Error | null)[] = []
  let wake = (): void => {}
  const say = (what: Entry | Error | null): void => {
    waiting.push(what)
    wake()
  }
  zip.on('entry', say)
  zip.on('end', () => say(null))
  zip.on('error', say)
  for (;;) {
    zip.readEntry()
    while (waiting.length === 0) await new Promise<void>((done) => (wake = done))
    const next = waiting.shift()
    if (next instanceof Error) throw next
    if (!next) return
    yield next
  }
}

async function* filesOf(zip: ZipFile) {
  try {
    for await (const entry of entriesOf(zip))
      if (!entry.fileName.endsWith('/'))
        yield { name: entry.fileName, bytes: await bytesOf(zip, entry) }
  } finally {
    zip.close()
  }
}

const OPTIONS = { lazyEntries: true, autoClose: false } as const

/** The files of a ZIP file in its order, one at a time. Throws on one that is cut or damaged. */
export async function* unzipFile(path: string) {
  yield* filesOf(await promisify<string, object, ZipFile>(open as never)(path, OPTIONS))
}

/** The files of a ZIP file held in memory. */
export async function* unzipBytes(bytes: Uint8Array) {
  const opened = promisify<Buffer, object, ZipFile>(fromBuffer as never)
  yield* filesOf(await opened(Buffer.from(bytes), OPTIONS))
}
