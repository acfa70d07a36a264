export interface WaterContent {
  name: string
  /** Words that name it in a recipe, in lower case. */
  words: readonly string[]
  /** Grams of water in 100 g. */
  waterPercent: number
  source: 'USDA Handbook 8 (1976), seen quoted' | 'USDA FoodData Central, from memory'
}

const handbook = 'USDA Handbook 8 (1976), seen quoted'
const central = 'USDA FoodData Central, from memory'

/** Water in usual ingredients: hints to start from, never limits. The more particular name stands first. */
const waterContents: readonly WaterContent[] = [
  {
    name: 'dry milk',
    words: ['dry milk', 'milk powder', 'milchpulver', 'lait en poudre', 'latte in polvere'],
    waterPercent: 2.5,
    source: handbook,
  },
  {
    name: 'buttermilk',
    words: ['buttermilk', 'buttermilch', 'babeurre', 'latticello'],
    waterPercent: 90.1,
    source: handbook,
  },
  {
    name: 'skim milk',
    words: ['skim milk', 'skimmed milk', 'magermilch', 'lait écrémé', 'latte scremato'],
    waterPercent: 90.8,
    source: handbook,
  },
  { name: 'low-fat milk', words: ['low-fat milk'], waterPercent: 89.2, source: handbook },
  {
    name: 'whole milk',
    words: ['milk', 'milch', 'vollmilch', 'lait', 'latte'],
    waterPercent: 88,
    source: handbook,
  },
  { name: 'sour cream', words: ['sour cream'], waterPercent: 71, source: handbook },
  {
    name: 'heavy cream',
    words: ['cream', 'sahne', 'rahm', 'vollrahm', 'crème', 'panna'],
    waterPercent: 57.7,
    source: handbook,
  },
  {
    name: 'yogurt',
    words: ['yogurt', 'yoghurt', 'joghurt', 'jogurt', 'naturjoghurt', 'yaourt'],
    waterPercent: 88,
    source: handbook,
  },
  { name: 'butter', words: ['butter', 'beurre', 'burro'], waterPercent: 15.9, source: handbook },
  {
    name: 'egg white',
    words: [
      'egg white',
      'eiweiss',
      'eiweiß',
      "blanc d'œuf",
      "blancs d'œuf",
      "blanc d'oeuf",
      'albume',
      'albumi',
    ],
    waterPercent: 87.6,
    source: central,
  },
  {
    name: 'egg yolk',
    words: [
      'yolk',
      'eigelb',
      'eigelbe',
      "jaune d'œuf",
      "jaunes d'œuf",
      "jaune d'oeuf",
      'tuorlo',
      'tuorli',
    ],
    waterPercent: 52.3,
    source: central,
  },
  {
    name: 'whole egg',
    words: ['egg', 'ei', 'eier', 'vollei', 'œuf', 'oeuf', 'uovo', 'uova'],
    waterPercent: 76.2,
    source: central,
  },
  {
    name: 'honey',
    words: ['honey', 'honig', 'miel', 'miele'],
    waterPercent: 17.1,
    source: central,
  },
  {
    name: 'fresh yeast',
    words: [
      'fresh yeast',
      'cake yeast',
      'frischhefe',
      'frische hefe',
      'levure fraîche',
      'lievito di birra fresco',
    ],
    waterPercent: 69,
    source: central,
  },
  {
    name: 'oil',
    words: ['oil', 'öl', 'olivenöl', 'rapsöl', 'sonnenblumenöl', 'huile', 'olio'],
    waterPercent: 0,
    source: central,
  },
]

/** The usual water content of an ingredient by its name; null where the table has none. */
export function waterContentOf(name: string): WaterContent | null {
  const plain = name.toLowerCase()
  return (
    waterContents.find(({ words }) =>
      words.some((word) => new RegExp(`(?:^|[^\\p{L}])${word}s?(?:$|[^\\p{L}])`, 'u').test(plain)),
    ) ?? null
  )
}
