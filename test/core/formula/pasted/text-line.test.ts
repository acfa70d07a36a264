import { expect, test } from 'vitest'
import { ingredientsIn } from '@/core/formula/pasted/split-line.ts'
import { readLine } from '@/core/formula/pasted/text-line.ts'

// 1 lb = 453.59237 g and 1 oz = 28.349523125 g (international avoirdupois, exact).
test.each([
  ['2 lb 2 oz flour', 'flour', 2 * 453.59237 + 2 * 28.349523125],
  ['1 lb, 2 oz flour', 'flour', 453.59237 + 2 * 28.349523125],
  ['1 kg 200 g durum flour', 'durum flour', 1200],
  ['flour 1 kg and 200 g', 'flour', 1200],
  ['1 l 200 ml water', 'water', 1200],
  ['350 g + 25 g water', 'water', 375],
])('the parts of one amount are added: %j', (line, name, grams) => {
  expect(readLine(line)).toMatchObject({ ok: true, name, grams: expect.closeTo(grams, 6) })
})

test.each([
  ['2 x 250 g wholemeal flour', 'wholemeal flour', 500],
  ['2 × 250 g wholemeal flour', 'wholemeal flour', 500],
  ['2x250g butter', 'butter', 500],
  ['butter 250 g x 2', 'butter', 500],
  ['1,5 x 200 g honey', 'honey', 300],
])('a number of times an amount is multiplied: %j', (line, name, grams) => {
  expect(readLine(line)).toMatchObject({ ok: true, name, grams })
})

test.each([
  ['500 g (17.6 oz) flour', 'flour', 500],
  ['flour 500 g / 17.6 oz', 'flour', 500],
  ['510 g (1 lb 2 oz) flour', 'flour', 510],
  ['510 g / 1 lb 2 oz flour', 'flour', 510],
  ['flour | 500 g | 100 %', 'flour', 500],
  ['flour (500 g)', 'flour', 500],
  ['Water 65%, 325 g', 'Water', 325],
  ['500 g butter, 82 % fat', 'butter, fat', 500],
  ['5 g salt (1 tsp)', 'salt (1 tsp)', 5],
])('an amount said twice counts once: %j', (line, name, grams) => {
  expect(readLine(line)).toMatchObject({ ok: true, name, grams })
})

// Such lines were refused; each ingredient is now read by itself.
test.each([
  ['100 g rye flour, 5 g salt', ['rye flour', 'salt']],
  ['500 g flour, 350 g water, 10 g salt', ['flour', 'water', 'salt']],
  ['100 g rye flour and 5 g salt', ['rye flour', 'salt']],
  ['100 g rye flour 5 g salt', ['rye flour', 'salt']],
  ['flour 100 %, water 65 %, salt 2 %', ['flour', 'water', 'salt']],
  ['flour 100 % water 65 %', ['flour', 'water']],
  ['500 g flour, 65 % water', ['flour', 'water']],
  ['100 g flour, 1 egg', ['flour', '1 egg']],
])('a line with more than one ingredient is read one by one: %j', (line, names) => {
  expect(ingredientsIn(line).map((item) => readLine(item).name)).toEqual(names)
})

test.each(['500 g flour (100 g rye)', '100 g (50 g) flour', '200 g 1 kg flour'])(
  'refuses two amounts of one ingredient: %j',
  (line) => {
    expect(readLine(line)).toMatchObject({ ok: false, reason: 'several-amounts' })
  },
)

test.each([
  ['flour 1,200 g', 'two-readings'],
  ['1.200 g flour', 'two-readings'],
  ['12,500 ml water', 'two-readings'],
  ['1.125 oz butter', 'two-readings'],
  ['2 (250 g) packs butter', 'of-how-many'],
  ['2 packs butter, 250 g each', 'of-how-many'],
  ['100 g to 150 g water', 'range'],
  ['100 g – 150 g water', 'range'],
])('refuses %j, which can be read two ways, as %s', (line, reason) => {
  expect(readLine(line)).toMatchObject({ ok: false, reason })
})

test.each([
  ['yeast 0,5 g', 0.5],
  ['yeast 1,5 g', 1.5],
  ['yeast 0,125 g', 0.125],
  ['flour 1.25 g', 1.25],
  ['flour 1 200 g', 1200],
  // As thousands it would be more than the tonne that a line may say.
  ['flour 1,200 kg', 1200],
  ['water 1.250 l', 1250],
])('a decimal stays one where it can be nothing else: %j', (line, grams) => {
  expect(readLine(line)).toMatchObject({ ok: true, grams })
})

test('the number of a type of flour is no thousands of its amount', () => {
  expect(readLine('Farina tipo 1 500 g')).toMatchObject({ name: 'Farina tipo 1', grams: 500 })
  expect(readLine('type 00 500 g flour')).toMatchObject({ name: 'type 00 flour', grams: 500 })
})

// 1 oz = 28.349523125 g, 1 lb = 453.59237 g (exact).
test.each([
  ['1 lb 2½ oz flour', 453.59237 + 2.5 * 28.349523125],
  ['1 lb 2 1/2 oz flour', 453.59237 + 2.5 * 28.349523125],
  ['½ x 250 g butter', 125],
  ['1/2 kg flour', 500],
  ['½ lb flour', 226.796185],
  ['1 1/2 kg flour', 1500],
])('a fraction is read as what it comes to: %j', (line, grams) => {
  expect(readLine(line)).toMatchObject({ ok: true, grams: expect.closeTo(grams, 6) })
})

test.each([
  ['1’250 g flour', 1250],
  ["1'250 g flour", 1250],
  ['flour 1.250,5 g', 1250.5],
  ['flour 1,250.5 g', 1250.5],
  ['2 dl water', 200],
  ['65 cl water', 650],
  ['680 g + 70 g water', 750],
  ['680 + 70 g = 750 g water', 750],
])('marks between thousands, and litres in parts: %j', (line, grams) => {
  expect(readLine(line)).toMatchObject({ ok: true, grams: expect.closeTo(grams, 6) })
})

test('a type of flour before its weight is no thousands', () => {
  expect(readLine('Weizenmehl 550 500 g')).toMatchObject({ name: 'Weizenmehl 550', grams: 500 })
  expect(readLine('Farina 00 500 g')).toMatchObject({ name: 'Farina 00', grams: 500 })
  expect(readLine('Farine 55 500 g')).toMatchObject({ ok: false, reason: 'two-readings' })
})
