import type { IngredientKind } from './formula-record.ts'
import { headOfName, withoutUse } from './head-of-name.ts'
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

const preferments =
  /(?<!\p{L})(?:starter|levain|leaven|sourdough|sauerteig|poolish|biga|pre-?ferment|sponge|vorteig|(?:lievito|pasta|masa) madre|p[a\u00e2]te ferment[e\u00e9]e|(?:old|mother) dough|tangzhong|yudane)s?(?!\p{L})(.*)$/iu
/** A grain behind the word tells of the preferment ("starter 100 % rye"); only "rye flour" would be what goes into it. */
const grains = /rye|spelt|einkorn|durum|emmer|kamut|whole ?wheat|wholemeal/giu
const noDough = /powder|dried|dry|bread|crumb|cake/iu

/**
 * What an ingredient is, guessed from the head of its name for the baker to correct ("water, for the yeast" is water); `dry
 * milk`, sugar, malt and seeds are `other`, and so is a preferment. Flour may be told behind a comma or in brackets too.
 */
export function kindOfName(name: string): IngredientKind {
  if (isPreferment(name)) return 'other'
  if (/dry milk|milk powder|milk, (?:dried|dry|powdered)|dried milk/iu.test(name)) return 'other'
  const kind = clueIn(headOfName(name))
  return kind ?? (clueIn(withoutUse(name)) === 'flour' ? 'flour' : 'other')
}

/**
 * Whether a name tells of flour and water already mixed (a starter, levain, poolish, biga, tangzhong), rather than of what
 * goes into it ("levain flour", "water for the biga").
 */
export function isPreferment(name: string): boolean {
  const head = headOfName(name).split(/\sof\s/iu)[0] ?? ''
  const found = preferments.exec(head)
  return (
    found !== null && !noDough.test(head) && clueIn((found[1] ?? '').replace(grains, ' ')) === null
  )
}

function clueIn(text: string): IngredientKind | null {
  return clues.find(([, clue]) => clue.test(text))?.[0] ?? null
}

/** The form of yeast a name tells of; instant where it does not say. */
export function yeastFormOfName(name: string): YeastForm {
  if (/fresh|cake|compressed|brewer/iu.test(name)) return 'fresh'
  return /active|traditional/iu.test(name) ? 'active-dry' : 'instant'
}
