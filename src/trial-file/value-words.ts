const longest = 40

/** A value found in a file in a few words: short ones as they stand, long ones by what they are. */
export function valueWords(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (Array.isArray(value)) return value.length === 1 ? 'a list of 1' : `a list of ${value.length}`
  if (value !== null && typeof value === 'object') return 'an object'
  if (typeof value === 'number')
    return Number.isFinite(value) ? String(value) : 'a number too large'
  const text = JSON.stringify(value)
  return text.length > longest ? `text of ${String(value).length} characters` : text
}
