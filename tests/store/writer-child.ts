import { openFileDb } from '../../src/store/file'
import { upsertHead } from '../../src/store/heads'
import { insertLines } from '../../src/store/lines'
import { insertText } from '../../src/store/texts'
import { aHead, aLine } from './rows'

// Writes batches of three statements for as long as it lives, and says each number once it is kept.
const [, , path = '', first = '1'] = process.argv

const main = async () => {
  const db = await openFileDb(path)
  for (let n = Number(first); ; n += 1) {
    await db.write([
      upsertHead(aHead('d1', { rev: n })),
      insertLines('d1', n - 1, [aLine(`line-${n}`)]),
      insertText({ id: `text-${n}`, docket: 'd1', field: 'note', text: `${n}` }),
    ])
    process.stdout.write(`${n}\n`)
  }
}

main().catch((error: unknown) => {
  console.error(error)
  process.exit(1)
})
