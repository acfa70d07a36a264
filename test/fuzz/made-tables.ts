/** Invented scores of a bake club: every taster scores every level in every session. */
export function scoresTable(sessions: number): string[][] {
  const head = ['session', 'flight', 'taster', 'level', 'liking', 'chew']
  const rows: string[][] = []
  for (let session = 1; session <= sessions; session += 1)
    for (const [who, taster] of ['AB', 'CD', 'EF', 'GH'].entries())
      for (const [which, level] of ['64', '69', '75'].entries()) {
        const liking = 4 + ((which * 2 + who + session) % 5)
        const chew = 9 - ((which + who * 3 + session) % 6)
        rows.push([String(session), '1', taster, level, String(liking), String(chew)])
      }
  return [head, ...rows]
}

/** Invented scores as a wide table: a row a taster, a column a level. */
export const wideTable: string[][] = [
  ['taster', '64 %', '69 %', '75 %'],
  ['AB', '5', '7', '6'],
  ['CD', '4', '6', '6'],
  ['EF', '6', '8', '5'],
]
