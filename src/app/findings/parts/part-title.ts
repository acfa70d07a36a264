/** The heading of a part of a response: that of the main one stands bare, the others name theirs, so that no two are alike. */
export function partTitle(title: string, index: number, name: string): string {
  return index === 0 ? title : `${title}: ${name.toLocaleLowerCase('en')}`
}
