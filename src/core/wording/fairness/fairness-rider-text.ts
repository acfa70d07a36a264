import { severityOf } from '@/core/fairness/severity-of.ts'
import { massText } from '@/core/units/mass-text.ts'
import { decimalText, shortUnit, signedText, withUnit } from '@/core/units/number-text.ts'
import {
  degreesRange,
  degreesWithSign,
  stepsFigure,
  stepsWithSign,
} from '@/core/units/temperature-text.ts'
import { pairApartText, withoutScaleText } from '@/core/wording/weighing/scales-apart-text.ts'
import { coarseText } from '@/core/wording/weighing/weighing-text.ts'
import { minutesBetween, minutesText } from '@/core/wording/words/duration-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { ingredientName, levelNamed, stepName } from '@/core/wording/words/named-in-plan.ts'
import {
  degreesBetween,
  massBetween,
  proofText,
  rangeText,
  type Sentences,
  sizeText,
  stepsApart,
} from './fairness-sentence.ts'

const moreOrLess = (lessGrams: number, what: string) =>
  `${massText(Math.abs(lessGrams), 0)} ${lessGrams < 0 ? 'more' : 'less'} ${what}`

const withoutWater = {
  'no-water': 'No water goes in at the mix',
  'some-water': 'Some doughs take no water at the mix',
} as const

/** Sentences about what rides along with the factor, before the flour is wet. */
export const riderSentences: Sentences<
  | 'water-temperature'
  | 'water-past-limits'
  | 'piece-mass'
  | 'flour-per-piece'
  | 'salt-in-water'
  | 'yeast-in-water'
  | 'water-rides'
  | 'choice-water'
  | 'starter-corrected'
  | 'starter-age'
  | 'stock-age'
  | 'ripeness'
  | 'steps-differ'
  | 'bake-ends'
  | 'oven-change'
  | 'fold-strength'
  | 'flour-water'
  | 'rest-in-mix'
  | 'second-water'
  | 'stock-stages'
  | 'doughs'
  | 'bench-flour'
  | 'levels-blur'
  | 'coarse-dose'
  | 'no-scale'
  | 'mixer-size'
> = {
  'water-temperature': (item) => {
    if (item.data.state === 'unknown')
      return 'No temperatures are entered, so nobody knows how far apart the doughs come out.'
    const apart = `${stepsApart(item, 1)} apart${proofText(item.data)}`
    const alike = Math.abs(item.amount?.value ?? 0) < 0.05
    if (item.data.state === 'no-water' || item.data.state === 'some-water')
      return alike
        ? `${withoutWater[item.data.state]}; the doughs come out equally warm as they are.`
        : `${withoutWater[item.data.state]}, so water cannot bring the doughs out equally warm: they come out ${apart}.`
    if (alike)
      return item.data.state === 'matched'
        ? 'Each batch has its own water temperature; one water for all would bring the doughs out equally warm.'
        : 'One water for all brings the doughs out equally warm.'
    return item.data.state === 'matched'
      ? `Each batch has its own water temperature. One water for all would bring the doughs out ${apart}.`
      : `One water for all brings the doughs out ${apart}. A kitchen thermometer is good to ${stepsFigure(0.5, 1)} to ${stepsWithSign(1, 0)}.`
  },
  'water-past-limits': (item, plan) => {
    const { levelId, waterCelsius, low, high } = item.data
    if (waterCelsius < 0)
      return `${levelNamed(plan, levelId)}: no water is cold enough for its dough, only ice in its place; advisable for the yeast are ${degreesRange(low, high)}.`
    return `${levelNamed(plan, levelId)}: its water would have to be ${degreesWithSign(waterCelsius, 1)}, ${stepsApart(item, 1)} outside the advisable ${degreesRange(low, high)}.`
  },
  'piece-mass': (item) =>
    `The ${item.data.of}s weigh ${massBetween(item.data, 0)}, ${sizeText(item, 1)} % apart. With the ${item.data.of} held instead, they would differ in flour by ${decimalText(item.data.flourPercentOtherwise, 1)} %.`,
  'flour-per-piece': (item) =>
    `The ${item.data.of}s weigh the same and hold ${massBetween(item.data, 1)} of flour, ${sizeText(item, 1)} % apart. With the flour held instead, they would differ in mass by ${decimalText(item.data.massPercentOtherwise, 1)} %.`,
  'salt-in-water': (item) =>
    `Salt makes ${rangeText(item.data, 2, '%')} of the water, ${sizeText(item, 0)} % apart.`,
  'yeast-in-water': (item) =>
    `Yeast makes ${rangeText(item.data, 2, '%')} of the water, ${sizeText(item, 0)} % apart.`,
  'water-rides': (item) =>
    `Water from everything runs from ${rangeText(item.data, 1, '% of flour')}: ${sizeText(item, 1)} points that nobody asked for.`,
  'choice-water': (item) =>
    item.data.own
      ? 'Options stand at their own water, so the answer is about flours at their best, water included.'
      : 'All options stand at the same water, so the answer is about the swap as it stands.',
  'starter-corrected': (item, plan) => {
    const { levelId, lessFlourGrams, lessWaterGrams } = item.data
    return `Left alone, ${levelNamed(plan, levelId)} would be ${sizeText(item, 1)} points off in hydration. Against the reference the weigh sheet takes ${moreOrLess(lessFlourGrams, 'flour')} and ${moreOrLess(lessWaterGrams, 'water')} into the final mix.`
  },
  'starter-age': (item) =>
    `${item.data.name} is ${minutesText(item.amount?.value ?? 0, 0)} older at the last mix than at the first.`,
  'stock-age': (item, plan) =>
    `The stock of ${ingredientName(plan, item.data.ingredientId)} is ${minutesText(item.amount?.value ?? 0, 0)} older at the last mix than at the first.`,
  ripeness: (item, plan) => {
    const { endsBy, quicker, stepIds } = item.data
    if (endsBy === 'mark')
      return 'The proof ends by a mark, so ripeness is the same; its time may differ between levels, and the log keeps it.'
    const steps = listText(stepIds.map((id) => stepName(plan, id)))
    const who = {
      high: `the highest level ripens first; levels lie ${sizeText(item, 0)} % apart`,
      low: `the lowest level ripens first; levels lie ${sizeText(item, 0)} % apart`,
      unknown: 'which ripens first is not known',
    }[quicker]
    return `${steps}: ended by the clock, and ${who}.`
  },
  'bake-ends': ({ data }) => {
    const { of, by, minutes, low, high } = data
    if (by !== 'clock')
      return by === 'core'
        ? 'Each bake ends by a reading, so all are baked through alike; their minutes are a result. Keep bake loss and colour beside it.'
        : 'Each bake ends by a mark, so all are baked alike as far as the eye tells; their minutes are a result.'
    const range = {
      water: rangeText({ low, high }, 0, '% of flour'),
      mass: massBetween({ low, high }, 0),
      temperature: degreesBetween({ low, high }, 0),
    }[of]
    const what = { water: 'water', mass: 'a piece', temperature: 'the oven' }[of]
    return `All bake ${minutesText(minutes, 0)} by the clock, and ${what} runs from ${range}: they will not be baked alike.`
  },
  'oven-change': ({ data }) =>
    `The oven is to go from ${degreesRange(data.low, data.high)}: 10 to 20 min for its air, 20 to 40 for a stone, and 30 to 60 on the way down.`,
  'fold-strength': ({ data }) =>
    data.by === 'strength'
      ? 'Each dough is folded until it passes the same test, so strength is the same and the number of folds a result.'
      : 'All doughs get the same folds, so strength rides along with the factor.',
  'flour-water': ({ data }) => {
    const { leastPoints, mostPoints, known, own } = data
    if (own) return 'Each share of flour stands at its own water, so the answer is about both.'
    return known
      ? `All levels stand at one water. By the figures of your lots the last share wants ${decimalText(Math.abs(mostPoints), 1)} points ${mostPoints < 0 ? 'less' : 'more'} than the first.`
      : `All levels stand at one water. The share with most bran would want ${decimalText(leastPoints, 1)} to ${decimalText(mostPoints, 1)} points more than the one with least, if it is wholemeal.`
  },
  'rest-in-mix': ({ data }) => {
    const { low, high, driftCelsius, roomCelsius, carried } = data
    const stands = `Wetted, the doughs stand ${minutesBetween({ low, high }, 0)} before their mix ends and come up to ${stepsWithSign(Math.abs(driftCelsius), 1)} nearer to the room’s ${degreesWithSign(roomCelsius, 0)}`
    return carried
      ? `${stands}; the water of each batch reckons with it.`
      : `${stands}; one water for all reckons with one of them alone.`
  },
  'second-water': ({ data }) => {
    const warm =
      data.celsius === null
        ? 'its temperature is not said'
        : `at ${degreesWithSign(data.celsius, 0)}`
    return `Water goes in twice: of ${data.name} ${massBetween(data, 0)} a batch, ${warm}.`
  },
  'stock-stages': ({ data }, plan) =>
    `${ingredientName(plan, data.ingredientId)} goes into ${data.preferment} and into the dough hours later: the weigh sheet makes a stock for each, the second fresh at the mix.`,
  'steps-differ': (item) =>
    `From mix to oven the levels take ${minutesBetween(item.data, 0)}, ${minutesText(item.amount?.value ?? 0, 0)} apart.`,
  doughs: (item) => {
    if (item.data.doughs === 'one')
      return item.data.time
        ? 'One dough, baked apart: its pieces meet the oven, and the table, at different times.'
        : 'One dough is divided late, so no batch differs from another.'
    return item.data.time
      ? 'Mixed apart, baked together: the doughs are begun at different times and can differ as batches do.'
      : 'Each level has a dough of its own, though the factor acts later; one dough divided late would do.'
  },
  'bench-flour': (item, plan) => {
    const { fiveGrams, tenGrams, wetFive, gap, intoGrams } = item.data
    const unit = shortUnit(plan.factor.unitOfMeasure)
    const water =
      Math.abs(wetFive) >= 0.005
        ? `; ${massText(5, 0)} of water from wet hands by ${signedText(wetFive, 2)}`
        : ''
    return `${massText(5, 0)} of bench flour in ${massText(intoGrams, 0)} of dough moves a level by up to ${signedText(fiveGrams, 2)} and ${massText(10, 0)} by ${withUnit(signedText(tenGrams, 2), unit)}${water}. The smallest gap between levels is ${withUnit(decimalText(gap, 2), unit)}.`
  },
  'levels-blur': (item, plan) => {
    const { gap, blur } = item.data
    const apart = ({ fine: 'kept-apart', know: 'barely', fix: 'not' } as const)[
      severityOf('levels-blur', blur / gap)
    ]
    return pairApartText({ ...item.data, apart }, plan)
  },
  'coarse-dose': (item, plan) => {
    const { ingredientId, smallestGrams, shared } = item.data
    const name = ingredientName(plan, ingredientId)
    return shared || smallestGrams === null
      ? `${name} is shared by all batches; each dose is off by about ${sizeText(item, 1)} %.`
      : coarseText(name, smallestGrams, (item.amount?.value ?? 0) / 100)
  },
  'no-scale': () => withoutScaleText,
  'mixer-size': (item) =>
    item.data.fit === 'too-much'
      ? `${massText(item.data.doughGrams, 0)} of dough is ${massText(item.amount?.value ?? 0, 0)} more than the mixer takes.`
      : `${massText(item.data.doughGrams, 0)} of dough is ${massText(item.amount?.value ?? 0, 0)} less than the mixer mixes well.`,
}
