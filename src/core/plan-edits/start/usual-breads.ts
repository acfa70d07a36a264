import type { Formula, IngredientKind } from '@/core/formula/formula-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type UsualStep, usualSteps } from './usual-steps.ts'

interface Line {
  name: string
  kind: IngredientKind
  percent: number
}

/** A bread as many bake it. Percentages of all flour, times and temperatures are common practice, without a source; invented as a whole. */
export interface UsualBread {
  key: string
  /** As in a sentence. */
  name: string
  lines: readonly Line[]
  /** A levain: the share of the first flour that it takes, percent of all flour, at as much water. */
  levainPercent?: number
  batchSize: Formula['batchSize']
  serving: Plan['serving']
  steps: readonly UsualStep[]
}

const flour = (name: string, percent = 100): Line => ({ name, kind: 'flour', percent })
const water = (percent: number): Line => ({ name: 'Water', kind: 'water', percent })
const salt = (percent: number): Line => ({ name: 'Salt', kind: 'salt', percent })
const yeast = (percent: number): Line => ({ name: 'Instant yeast', kind: 'yeast', percent })
const fat = (name: string, percent: number): Line => ({ name, kind: 'fat', percent })
const other = (name: string, percent: number): Line => ({ name, kind: 'other', percent })
const loaf = { by: 'flour', flourGrams: 500 } as const
const { mix, rest, fold, shape, proof, bake, cool, cut, feed, flatten, boil } = usualSteps

/** Usual formulas by style, to begin a trial with: common practice, no source; each is there to be changed. */
export const usualBreads: readonly UsualBread[] = [
  {
    key: 'pan-loaf',
    name: 'pan loaf',
    lines: [flour('Bread flour'), water(62), salt(2), yeast(1), fat('Butter', 3)],
    ...{ batchSize: loaf, serving: 'rested' },
    steps: [mix(12, 60), shape(3), proof(60), bake(200, 35), cool(120), cut],
  },
  {
    key: 'levain-loaf',
    name: 'country loaf with a levain',
    lines: [flour('Bread flour', 85), flour('Wholemeal flour', 15), water(72), salt(2)],
    levainPercent: 10,
    ...{ batchSize: loaf, serving: 'rested' },
    steps: [
      feed,
      mix(10, 30),
      fold(3),
      rest(90),
      shape(4),
      proof(90),
      bake(235, 40),
      cool(120),
      cut,
    ],
  },
  {
    key: 'flatbread',
    name: 'flatbread',
    lines: [flour('Bread flour'), water(62), salt(2), yeast(0.6), fat('Olive oil', 4)],
    batchSize: { by: 'pieces', pieces: 4, pieceGrams: 140, lossPercent: 2 },
    serving: 'as-baked',
    steps: [mix(8, 60), shape(1), proof(30), flatten, bake(250, 5)],
  },
  {
    key: 'boiled-ring',
    name: 'boiled ring',
    lines: [flour('Bread flour'), water(56), salt(2), yeast(0.7), other('Barley malt', 2)],
    batchSize: { by: 'pieces', pieces: 6, pieceGrams: 110, lossPercent: 2 },
    serving: 'rested',
    steps: [mix(12, 20), shape(2), proof(40), boil, bake(220, 18), cool(60), cut],
  },
  {
    key: 'rye-tin',
    name: 'rye tin loaf',
    lines: [flour('Wholemeal rye flour'), water(85), salt(2)],
    levainPercent: 35,
    ...{ batchSize: loaf, serving: 'rested' },
    steps: [feed, mix(6, 60), shape(2), proof(90), bake(220, 60), cool(24 * 60), cut],
  },
  {
    key: 'rich-dough',
    name: 'rich dough with egg and butter',
    lines: [
      ...[flour('Bread flour'), water(38), { name: 'Egg', kind: 'liquid', percent: 20 } as const],
      ...[other('Sugar', 10), salt(1.8), yeast(1.2), fat('Butter', 25)],
    ],
    ...{ batchSize: loaf, serving: 'rested' },
    steps: [mix(18, 60), shape(3), proof(90), bake(180, 28), cool(60), cut],
  },
]
