// One token: a comment, a quoted text, a word, or any other character. Quotes inside quotes double.
const token =
  /--[^\n]*|\/\*[\s\S]*?\*\/|'(?:[^']|'')*'|"(?:[^"]|"")*"|`[^`]*`|\[[^\]]*\]|\w+|\s+|[\s\S]/g
const isComment = (text: string) => text.startsWith('--') || text.startsWith('/*')

/**
 * Cuts a script into single statements, without comments and closing semicolons. A trigger's body
 * (BEGIN … END, with CASE … END inside) stays in one piece.
 */
export const splitStatements = (script: string): readonly string[] => {
  const statements: string[] = []
  let text = ''
  let words: string[] = []
  let depth = 0
  for (const part of script.match(token) ?? []) {
    if (isComment(part)) continue
    if (part === ';' && depth === 0) {
      if (text.trim() !== '') statements.push(text.trim())
      text = ''
      words = []
      continue
    }
    text += part
    if (!/^\w+$/.test(part)) continue
    const word = part.toUpperCase()
    words.push(word)
    if (word === 'CASE' || (word === 'BEGIN' && isTrigger(words))) depth += 1
    if (word === 'END' && depth > 0) depth -= 1
  }
  if (text.trim() !== '') statements.push(text.trim())
  return statements
}

const isTrigger = (words: readonly string[]) =>
  words[0] === 'CREATE' && words.slice(1, 3).includes('TRIGGER')
