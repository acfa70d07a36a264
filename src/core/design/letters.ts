const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

/** The letter of a tub by its number from 0: A … Z, then AA, AB … (702 in all; more throws). */
export function letterAt(index: number): string {
  const last = alphabet[index % 26]
  const lead = index < 26 ? '' : alphabet[Math.floor(index / 26) - 1]
  if (last === undefined || lead === undefined) throw new Error(`no letter for line ${index}`)
  return lead + last
}
