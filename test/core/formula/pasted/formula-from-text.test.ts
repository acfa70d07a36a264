import { expect, test } from 'vitest'
import { kindOfName, yeastFormOfName } from '@/core/formula/kind-of-name.ts'
import { formulaFromText } from '@/core/formula/pasted/formula-from-text.ts'
import { readLine } from '@/core/formula/pasted/text-line.ts'

const ids = () => {
  let count = 0
  return () => {
    count += 1
    return `i${count}`
  }
}

test('amounts before or after the name, in every unit, with comma decimals', () => {
  const text = [
    'Bread flour: 800 g',
    '200g rye flour',
    '0,7 l water',
    'salt — 20 g',
    '* Instant yeast 3,5 g',
    'Olive oil 1 oz',
    'Butter 0.1 lb',
    'Whole milk 50 ml',
  ].join('\n')
  const { formula, items } = formulaFromText(text, ids())
  expect(items.every(({ is }) => is === 'ingredient')).toBe(true)
  expect(formula?.batchSize).toEqual({ by: 'flour', flourGrams: 1000 })
  const percents = formula?.ingredients.map(({ name, kind, percent }) => [name, kind, percent])
  expect(percents).toEqual([
    ['Bread flour', 'flour', 80],
    ['rye flour', 'flour', 20],
    ['water', 'water', 70],
    ['salt', 'salt', 2],
    ['Instant yeast', 'yeast', expect.closeTo(0.35, 12)],
    ['Olive oil', 'fat', expect.closeTo(2.8349523125, 12)],
    ['Butter', 'fat', expect.closeTo(4.535923700000001, 12)],
    ['Whole milk', 'liquid', 5],
  ])
  expect(formula?.ingredients[4]).toMatchObject({ yeastForm: 'instant' })
  expect(formula?.ingredients[6]).toMatchObject({ waterPercent: 15.9 })
  expect(formula?.ingredients[7]).toMatchObject({ waterPercent: 88 })
})

test('percent lines: flours are scaled to 100, the rest stands as written', () => {
  const { formula } = formulaFromText('flour 100%\nwater 65 %\nsalt 2%', ids(), new Map(), 500)
  expect(formula?.ingredients.map(({ percent }) => percent)).toEqual([100, 65, 2])
  expect(formula?.batchSize).toEqual({ by: 'flour', flourGrams: 500 })
  const mixed = formulaFromText('Flour (100 %) 500 g\nWater 65% 325 g\nSalt 2 %', ids())
  expect(mixed.formula?.ingredients.map(({ name, percent }) => [name, percent])).toEqual([
    ['Flour', 100],
    ['Water', 65],
    ['Salt', 2],
  ])
})

test.each([
  ['2 cups flour', 'cups-and-spoons'],
  ['1/2 tsp salt', 'cups-and-spoons'],
  ['1 tablespoon honey', 'cups-and-spoons'],
  ['300-350 g water', 'range'],
  ['60 to 65 % water', 'range'],
  ['2 eggs', 'pieces-not-weighed'],
  ['a little salt', 'no-amount'],
  ['🍞🍞', 'no-amount'],
  ['500 g', 'no-name'],
  ['flour 9999999 g', 'too-large'],
  ['honey 20 ml', 'volume-of-no-water'],
  ['flour 1.00,5 g', 'two-separators'],
])('refuses %j as %s and keeps the text', (text, reason) => {
  const { items, formula } = formulaFromText(text, ids())
  expect(items).toEqual([expect.objectContaining({ line: 1, text, is: 'question', why: reason })])
  expect(formula).toBeNull()
})

test('names with numbers of their own are no amounts', () => {
  expect(readLine('Flour T65 500 g')).toMatchObject({ ok: true, name: 'Flour T65', grams: 500 })
  expect(readLine('500 g of tipo 00 flour')).toMatchObject({ name: 'tipo 00 flour', grams: 500 })
})

test('a second line of the same name is refused and not counted', () => {
  const { items, formula } = formulaFromText('flour 500 g\nflour 500 g\nwater 300 g', ids())
  expect(items[1]).toMatchObject({ is: 'question', why: 'duplicate', line: 2 })
  expect(formula?.ingredients.map(({ percent }) => percent)).toEqual([100, 60])
})

test('without flour there is no formula, and it says so', () => {
  expect(formulaFromText(' \n\n', ids())).toMatchObject({
    items: [],
    formula: null,
    reason: 'empty',
  })
  expect(formulaFromText('water 3 g', ids())).toMatchObject({ formula: null, reason: 'no-flour' })
})

test('kinds from names', () => {
  const names = [
    'buttermilk',
    'butter',
    'salted butter',
    'dry milk',
    'fresh yeast',
    'eggs',
    'sugar',
  ]
  const kinds = ['liquid', 'fat', 'fat', 'other', 'yeast', 'liquid', 'other']
  expect(names.map(kindOfName)).toEqual(kinds)
  expect(['fresh yeast', 'active dry yeast', 'yeast'].map(yeastFormOfName)).toEqual([
    'fresh',
    'active-dry',
    'instant',
  ])
})

test.each([
  ['water, for the yeast', 'water'],
  ['Water for the levain', 'water'],
  ['sugar, for the yeast', 'other'],
  ['sugar (for the yeast)', 'other'],
  ['honey dissolved in water', 'other'],
  ['tomatoes in oil', 'other'],
  ['flour with wheat germ', 'flour'],
  ['strong white, bread flour', 'flour'],
  ['milk, dried', 'other'],
  ['Yeast, fresh', 'yeast'],
  ['For the dough: flour', 'flour'],
  ['levain flour', 'flour'],
  ['for dusting flour', 'flour'],
  ['(filtered) water', 'water'],
])('the kind of %j comes from its head: %s', (name, kind) => {
  expect(kindOfName(name)).toBe(kind)
})

test('the water of an ingredient comes from its head too', () => {
  const { formula } = formulaFromText('flour 500 g\nsugar, for the milk 20 g', ids())
  expect(formula?.ingredients[1]).not.toHaveProperty('waterPercent')
})

test.each([
  'rye sourdough starter',
  'sourdough starter',
  'ripe leaven',
  'starter, made with rye flour',
  'biga',
  'liquid preferment',
  'pre-ferment',
  'lievito madre',
  'pâte fermentée',
  'old dough',
  'sponge',
  'Sauerteig',
  'starter: rye',
  'starter 100 % rye',
])('a preferment is no ingredient by itself, and never flour: %j', (name) => {
  const { formula, items } = formulaFromText(`flour 500 g\nwater 300 g\n${name} 150 g`, ids())
  expect(items[2]).toMatchObject({ is: 'question' })
  expect(kindOfName(name)).toBe('other')
  expect(formula?.batchSize).toEqual({ by: 'flour', flourGrams: 500 })
  expect(formula?.ingredients.map(({ percent }) => percent)).toEqual([100, 60])
})

test.each([
  'flour for the levain',
  'poolish water',
  'levain rye flour',
  'sourdough flour',
  'leavening sugar',
])('what goes into a preferment is an ingredient like any other: %j', (name) => {
  const { items } = formulaFromText(`bread flour 500 g\n${name} 150 g`, ids())
  expect(items[1]).toMatchObject({ is: 'ingredient' })
})

test.each(['Levain (100 % hydration)', 'Poolish'])(
  'a preferment whose hydration is known is taken apart: %j',
  (name) => {
    // 150 g of equal flour and water: 75 g each, so 575 g flour and 375 g water in all.
    const { formula } = formulaFromText(`flour 500 g\nwater 300 g\n${name} 150 g`, ids())
    expect(formula?.batchSize).toEqual({ by: 'flour', flourGrams: 575 })
    expect(formula?.preferments[0]?.flourSharePercent).toBeCloseTo(7500 / 575, 9)
  },
)

test('a line that has nothing to be a percent of says which', () => {
  const reasons = (text: string) =>
    formulaFromText(text, ids()).items.map((item) => (item.is === 'question' ? item.why : null))
  expect(reasons('water 300 g\nsalt 2 %')).toEqual(['weight-without-flour', 'no-flour-at-all'])
  expect(reasons('flour 100 %\nwater 300 g')).toEqual([null, 'weight-without-flour'])
  expect(reasons('flour 500 g\nrye flour 20 %')).toEqual([null, 'percent-without-flour'])
})

test('a corrected kind moves the percents of all', () => {
  const text = 'strong white 400 g\nwholemeal 100 g\nwater 350 g'
  const { formula } = formulaFromText(text, ids(), new Map([['strong white', 'flour']]))
  expect(formula?.ingredients.map(({ kind, percent }) => [kind, percent])).toEqual([
    ['flour', 80],
    ['flour', 20],
    ['water', 70],
  ])
})

test('a minus is no bullet, and a power of ten no amount', () => {
  for (const line of ['-5 g sugar', 'sugar −5 g', '–5 g sugar'])
    expect(readLine(line)).toMatchObject({ ok: false, reason: 'too-small' })
  for (const line of ['- 5 g sugar', 'sugar - 5 g', '– sugar 5 g', '* 5 g sugar'])
    expect(readLine(line)).toMatchObject({ ok: true, name: 'sugar', grams: 5 })
  expect(readLine('1e308 g rye flour')).toMatchObject({ ok: false, reason: 'not-a-number' })
})

test('a percent beside a weight and a total are asked about where they do not agree', () => {
  // 15 g of 500 g flour are 3 %, not 2; 500 + 350 + 15 = 865 g, not 900.
  const text = '500 g flour (100 %)\n350 g water (70%)\n15 g salt (2 %)\ntotal 900 g'
  const { doubts, formula } = formulaFromText(text, ids())
  expect(doubts).toEqual([
    { what: 'percent', name: 'salt', statedPercent: 2, weighedPercent: 3 },
    { what: 'total', of: 'dough', statedGrams: 900, linesGrams: 865 },
  ])
  expect(formula?.ingredients.map(({ name }) => name)).toEqual(['flour', 'water', 'salt'])
})

test('what agrees by its own rounding is no question, nor is the fat of a butter', () => {
  // 9 g of 500 g are 1.8 %, which two per cent rounds to; 345 g are 69 %.
  const text = '500 g flour\n345 g water (69 %)\n9 g salt (2 %)\nTotal dough: 854 g'
  expect(formulaFromText(text, ids()).doubts).toEqual([])
  expect(formulaFromText('500 g flour\n50 g butter, 82 % fat', ids()).doubts).toEqual([])
})

test('a yield of dough, a hydration beside the flour and a preferment whose parts come to more are asked about where they disagree', () => {
  const lines = ['500 g bread flour', '350 g water', '10 g salt']
  const doubts = (...text: string[]) => formulaFromText(text.join('\n'), ids()).doubts
  const total = { what: 'total', of: 'dough', statedGrams: 1900, linesGrams: 860 }
  for (const made of ['makes 1900 g of dough', 'Yield: 1.9 kg', 'ergibt 1900 g Teig'])
    expect(doubts(...lines, made)).toEqual([total])
  expect(doubts(...lines, 'makes 860 g of dough')).toEqual([])
  // Of baked bread nothing is said that the lines could bear out.
  expect(doubts(...lines, 'makes one 780 g loaf')).toEqual([])
  const hydration = { what: 'hydration', statedPercent: 80, linesPercent: 70 }
  for (const flour of ['bread flour: 500 g (hydration 80%)', '500 g bread flour (80% hydration)']) {
    const { formula, doubts: found } = formulaFromText(
      [flour, '350 g water', '10 g salt'].join('\n'),
      ids(),
    )
    expect(formula?.ingredients[0]?.name).toBe('bread flour')
    expect(found).toEqual([hydration])
  }
  expect(doubts('500 g bread flour (70% hydration)', '350 g water', '10 g salt')).toEqual([])
  const levain = '100 g levain (60 g rye flour, 50 g water)'
  expect(doubts(...lines, levain)).toEqual([
    { what: 'preferment-share', name: 'levain', takenGrams: 100, partsGrams: 110 },
  ])
  expect(doubts(...lines, '110 g levain (60 g rye flour, 50 g water)')).toEqual([])
})
