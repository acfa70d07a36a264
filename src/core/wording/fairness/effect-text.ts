import {
  type EffectRate,
  type EffectThrough,
  pointsOfRipeness,
} from '@/core/fairness/effect/effect-rates.ts'
import type { WeighedItem } from '@/core/fairness/effect/largest-by-effect.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'

const through: Readonly<Record<EffectThrough | 'level', string>> = {
  ripeness: 'through ripeness, a tenth more proof taken as 0.4 points',
  freshness: 'through freshness, ten minutes of a hot piece taken as 0.8 points',
  staling: 'through freshness, a third older taken as half a point',
  baking: 'through how far each is baked',
  strength: 'through how the dough is built',
  order: 'through order, the first sample against the last taken as half a point',
  blindness: 'because scores follow what one knows or hears',
  handling: 'through handling',
  words: 'because less can then be said',
  level: 'because levels come nearer to each other, the whole range taken as 2 points',
}

/** Less than this is said as little. */
const leastSaid = 0.05

/** What an item may do to the answer, in one sentence; without points where the main response is no liking on nine points. */
export function effectText({ effect }: WeighedItem, plan: Plan): string {
  if (effect.is === 'no-verdict') return 'Without it there is no verdict.'
  const main = plan.responses.find(({ id }) => id === plan.mainResponseId)
  if (main?.scale.kind !== 'nine-point') {
    const name = main ? ` for ${main.name}` : ''
    return `Ranked by what it usually does to liking; how much it is${name}, nobody has said.`
  }
  const points = `${decimalText(effect.points, 1)} points`
  switch (effect.is) {
    case 'chance':
      return `Two doughs of one level differ by up to ${points} by chance alone, and once made they cannot be told from the factor.`
    case 'unseen':
      return effect.points < leastSaid
        ? 'It leaves the answer as it is.'
        : `A true difference of up to ${points} may stay unseen.`
    case 'moves':
      return effect.points < leastSaid
        ? 'It moves the answer by next to nothing.'
        : `It may move the answer by about ${points}, ${through[effect.through]} (common practice).`
  }
}

/** What each unit of an item's size is taken to be worth, for the table of sizes. */
export function effectRateText(rate: EffectRate): string {
  switch (rate.by) {
    case 'size':
      return `${plainNumber(Number(rate.pointsEach.toPrecision(2)))} each`
    case 'yes':
      return plainNumber(rate.points)
    case 'gap':
      return 'its share of 2 over the range'
    case 'gassing':
      return `${plainNumber(pointsOfRipeness)} each % of gas`
    case 'one-dough':
      return 'two doughs by chance'
    case 'unseen':
      return 'what would show'
    case 'no-verdict':
      return 'no verdict'
  }
}
