import type { IngredientKind } from './formula-record.ts'
import type { YeastForm } from './yeast-conversion.ts'

const clues: readonly [IngredientKind, RegExp][] = [
  ['yeast', /yeast|levur|hefe|lievito di birra/iu],
  ['salt', /(?:^|[^\p{L}])salt(?![\p{L}])|(?:^|[^\p{L}])(?:sale|sel|salz)(?![\p{L}])/iu],
  ['fat', /oil|butter(?!milk)|lard|margarine|shortening|ghee/iu],
  ['liquid', /milk(?! powder)|cream|yogh?urt|whey|(?<![\p{L}])eggs?(?![\p{L}])|yolk|juice|beer/iu],
  ['water', /(?<![\p{L}])water|(?<![\p{L}])(?:acqua|eau|wasser)(?![\p{L}])/iu],
  [
    'flour',
    /flour|farina|farine|mehl|semolina|whole ?wheat|wholemeal|(?<![\p{L}])(?:rye|spelt|einkorn|durum|emmer|kamut)(?![\p{L}])|type ?0|tipo ?0|(?<![\p{L}])t(?:45|55|65|80|110|150)(?!\d)/iu,
  ],
]

/** What an ingredient is, guessed from its name for the baker to correct; `dry milk`, sugar, malt and seeds are `other`. */
export function kindOfName(name: string): IngredientKind {
  if (/dry milk|milk powder|dried milk/iu.test(name)) return 'other'
  return clues.find(([, clue]) => clue.test(name))?.[0] ?? 'other'
}

/** The form of yeast a name tells of; instant where it does not say. */
export function yeastFormOfName(name: string): YeastForm {
  if (/fresh|cake|compressed|brewer/iu.test(name)) return 'fresh'
  return /active|traditional/iu.test(name) ? 'active-dry' : 'instant'
}
