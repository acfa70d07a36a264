/** Where a text stops being JSON: line and column counted from 1, the column in UTF-16 units as editors count. */
export interface JsonPlace {
  line: number
  column: number
  /** What was expected there and what stands there instead. */
  detail: string
}

const space = /[ \t\n\r]*/y
const scalar = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids exactly these inside text (RFC 8259, section 7)
const textPart = /[^"\\\u0000-\u001f]+|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y

type Awaited = 'value' | 'value-or-end' | 'key' | 'key-or-end' | 'colon' | 'comma-or-end' | 'end'

const awaitedWords: Readonly<Record<Awaited, string>> = {
  value: 'a value',
  'value-or-end': 'a value or ]',
  key: 'a key in double quotes',
  'key-or-end': 'a key in double quotes or }',
  colon: 'a colon',
  'comma-or-end': 'a comma or a closing bracket',
  end: 'the end of the file',
}

/** Reads on from `offset` by a sticky pattern; the offset after what it matched, or the same offset. */
function after(pattern: RegExp, text: string, offset: number): number {
  pattern.lastIndex = offset
  return offset + (pattern.exec(text)?.[0].length ?? 0)
}

/** Reads text in double quotes from its opening quote: the offset after it, and whether it was closed. */
function afterText(text: string, opening: number): { offset: number; closed: boolean } {
  let offset = opening + 1
  for (;;) {
    const next = after(textPart, text, offset)
    if (next === offset) break
    offset = next
  }
  return text[offset] === '"' ? { offset: offset + 1, closed: true } : { offset, closed: false }
}

function placeOf(text: string, offset: number, expected: string): JsonPlace {
  const before = text.slice(0, offset).split(/\r\n|\n|\r/)
  const codePoint = text.codePointAt(offset)
  return {
    line: before.length,
    column: (before.at(-1)?.length ?? 0) + 1,
    detail: `${expected} was expected, ${foundWords(text, codePoint)}`,
  }
}

/** What stands at a place, in words that can be printed: bytes of a picture or a program are said to be no text. */
function foundWords(text: string, codePoint: number | undefined): string {
  if (text.trim() === '') return 'the file is empty'
  if (codePoint === undefined) return 'the file ends there'
  const character = String.fromCodePoint(codePoint)
  if (codePoint < 32) return `control character ${codePoint} stands there`
  return /[\p{C}\ufffd]/u.test(character)
    ? 'bytes that are no text stand there'
    : `“${character}” stands there`
}

/**
 * The first place where a text is no JSON (RFC 8259), or undefined when it is JSON throughout. Engines word and place
 * the errors of their own parsers differently; this reads the grammar itself, without recursion, so that every engine
 * gives the same place and no depth of brackets can exhaust the stack.
 */
export function jsonPlace(text: string): JsonPlace | undefined {
  const open: ('[' | '{')[] = []
  let awaited: Awaited = 'value'
  let offset = after(space, text, 0)
  const afterValue = (): Awaited => (open.length === 0 ? 'end' : 'comma-or-end')
  while (offset < text.length) {
    const character = text[offset] ?? ''
    const inside = open.at(-1)
    const wantsValue: boolean = awaited === 'value' || awaited === 'value-or-end'
    const wantsKey: boolean = awaited === 'key' || awaited === 'key-or-end'
    const mayClose = inside !== undefined && awaited.endsWith('-or-end')
    if (wantsValue && (character === '[' || character === '{')) {
      open.push(character)
      awaited = character === '[' ? 'value-or-end' : 'key-or-end'
      offset += 1
    } else if ((wantsValue || wantsKey) && character === '"') {
      const read = afterText(text, offset)
      if (!read.closed) return placeOf(text, read.offset, 'more text or its closing quote')
      offset = read.offset
      awaited = wantsKey ? 'colon' : afterValue()
    } else if (awaited === 'colon' && character === ':') {
      awaited = 'value'
      offset += 1
    } else if (awaited === 'comma-or-end' && character === ',') {
      awaited = inside === '[' ? 'value' : 'key'
      offset += 1
    } else if (mayClose && character === (inside === '[' ? ']' : '}')) {
      open.pop()
      awaited = afterValue()
      offset += 1
    } else {
      const next = wantsValue ? after(scalar, text, offset) : offset
      if (next === offset) return placeOf(text, offset, awaitedWords[awaited])
      offset = next
      awaited = afterValue()
    }
    offset = after(space, text, offset)
  }
  return awaited === 'end' ? undefined : placeOf(text, offset, awaitedWords[awaited])
}
