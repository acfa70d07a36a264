import type { FactorKind } from '@/core/trial/factor.ts'

/** Kinds of factor as menus write them. */
export const factorKindNames: Readonly<Record<FactorKind, string>> = {
  hydration: 'Hydration',
  salt: 'Salt',
  yeast: 'Yeast',
  'preferment-share': 'Preferment share',
  'flour-share': "A flour's share",
  ingredient: "Another ingredient's percentage",
  'rest-time': 'Rest time',
  'proof-time': 'Proof time',
  'cold-hours': 'Cold hours',
  'fold-count': 'Fold count',
  'bake-temperature': 'Bake temperature',
  'bake-time': 'Bake time',
  'piece-mass': 'Piece mass',
  choice: 'A choice without order',
  own: 'Something else, in a unit of my own',
}

/** The name of a kind as it was kept; a kind that this program does not know is told as it stands. */
export function factorKindName(kind: string): string {
  return (factorKindNames as Readonly<Record<string, string>>)[kind] ?? kind
}
