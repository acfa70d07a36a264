import { expect, test } from 'vitest'
import { formulaProblems } from '@/core/formula/formula-problems.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { ingredient, plainFormula } from './a-formula.ts'

const seen = (formula: Formula) =>
  formulaProblems(formula).map(({ path, reason, severity }) => `${severity} ${path} ${reason}`)

const withPercents = (...percents: number[]) => {
  const [flour = 100, water = 70, salt = 2, yeast = 0.4] = percents
  return plainFormula({
    ingredients: [
      ingredient('flour', 'flour', flour),
      ingredient('water', 'water', water),
      ingredient('salt', 'salt', salt),
      ingredient('yeast', 'yeast', yeast),
    ],
  })
}

test('a sound formula has none', () => {
  expect(formulaProblems(plainFormula())).toEqual([])
})

test.each([
  ['no flour', withPercents(0), 'stop /ingredients no-flour'],
  ['flours off 100', withPercents(90), 'stop /ingredients flours-do-not-sum'],
  ['NaN', withPercents(100, Number.NaN), 'stop /ingredients/1/percent not-a-number'],
  ['negative', withPercents(100, 70, -2), 'stop /ingredients/2/percent negative-percent'],
  ['salt past sense', withPercents(100, 70, 20), 'ask /ingredients/2/percent percent-past-sense'],
  ['too dry', withPercents(100, 29.9), 'ask /ingredients/1/percent hydration-unusual'],
  ['too wet', withPercents(100, 150.1), 'ask /ingredients/1/percent hydration-unusual'],
  ['no water', withPercents(100, 0), 'ask /ingredients no-water'],
])('%s', (_, formula, expected) => {
  expect(seen(formula)).toContain(expected)
})

test('30 and 150 % are not asked about', () => {
  expect(seen(withPercents(100, 30))).toEqual([])
  expect(seen(withPercents(100, 150))).toEqual([])
})

test('sizes', () => {
  const sized = (batchSize: Formula['batchSize']) => seen(plainFormula({ batchSize }))
  expect(sized({ by: 'flour', flourGrams: 0 })).toEqual(['stop /batchSize/flourGrams no-dough'])
  expect(sized({ by: 'flour', flourGrams: Number.NaN })).toEqual([
    'stop /batchSize/flourGrams not-a-number',
  ])
  const pieces = { by: 'pieces' as const, pieces: 4, pieceGrams: 0, lossPercent: 2 }
  expect(sized(pieces)).toEqual(['stop /batchSize/pieceGrams no-dough'])
})

test('names: empty and twice', () => {
  const ingredients = [
    ...plainFormula().ingredients,
    { ...ingredient('x', 'other', 1), name: ' Salt ' },
    { ...ingredient('y', 'other', 1), name: '' },
  ]
  expect(seen(plainFormula({ ingredients }))).toEqual([
    'ask /ingredients/4/name duplicate-ingredient',
    'stop /ingredients/5/name nameless-ingredient',
  ])
})

test('a preferment that holds more than the whole names the ingredient and both amounts', () => {
  const poolish = {
    id: 'p',
    name: 'poolish',
    kind: 'poolish' as const,
    flourSharePercent: 80,
    parts: [
      { ingredientId: 'flour', percent: 100 },
      { ingredientId: 'water', percent: 100 },
    ],
  }
  // 80 % of 1,000 g flour at 100 % = 800 g water, of 700 g overall
  expect(formulaProblems(plainFormula({ preferments: [poolish] }))).toEqual([
    {
      path: '/ingredients/1/percent',
      severity: 'stop',
      reason: 'preferment-holds-more',
      ingredientId: 'water',
      name: 'water',
      overallGrams: 700,
      prefermentGrams: 800,
    },
  ])
})

test('preferments: parts that name nothing, no flour, flour off 100, more than all flour', () => {
  const part = (ingredientId: string, percent: number) => ({ ingredientId, percent })
  const make = (id: string, parts: ReturnType<typeof part>[], flourSharePercent = 10) => ({
    id,
    name: id,
    kind: 'other' as const,
    flourSharePercent,
    parts,
  })
  const preferments = [
    make('a', [part('gone', 10), part('flour', 100)]),
    make('b', [part('water', 50)]),
    make('c', [part('flour', 90)]),
    make('d', [part('flour', Number.NaN)]),
    make('e', [part('flour', 100)], 90),
  ]
  expect(seen(plainFormula({ preferments }))).toEqual(
    expect.arrayContaining([
      'stop /preferments/0/parts/0/ingredientId preferment-part-missing',
      'stop /preferments/1/parts preferment-without-flour',
      'stop /preferments/2/parts preferment-flour-does-not-sum',
      'stop /preferments/3/parts/0/percent not-a-number',
      'stop /preferments/4/flourSharePercent preferment-flour-past-all',
    ]),
  )
})
