/**
 * A name in the middle of a sentence: as typed, but for a capital that only began it ("Hydration" becomes "hydration"; "TVset",
 * "DR", "pH" and "T65" stay as they are).
 */
export function midSentence(name: string): string {
  const [first = ''] = name.split(/\s/)
  const onlyBegins = /^\p{Lu}[\p{Ll}’'-]+[,;:]?$/u.test(first)
  return onlyBegins ? name.slice(0, 1).toLocaleLowerCase('en') + name.slice(1) : name
}
