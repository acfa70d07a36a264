/** Things in a row as they are spoken: "a", "a and b", "a, b and c". An empty list gives an empty text. */
export function listText(items: readonly string[], lastWord: 'and' | 'or' = 'and'): string {
  const last = items.at(-1)
  if (last === undefined) return ''
  const before = items.slice(0, -1)
  return before.length === 0 ? last : `${before.join(', ')} ${lastWord} ${last}`
}

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten']

/** A count with its thing: "one session", "three sessions", "12 sessions", "no sessions". */
export function countText(count: number, one: string, many: string = `${one}s`): string {
  return `${countWord(count)} ${count === 1 ? one : many}`
}

/** A count in words up to ten, in figures beyond. */
export function countWord(count: number): string {
  return small[count] ?? String(count)
}

/** The first letter raised: a sentence that begins with a word from elsewhere. */
export function asSentenceStart(text: string): string {
  const [first = ''] = text
  return first.toLocaleUpperCase('en') + text.slice(first.length)
}
