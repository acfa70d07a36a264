import type { DayCost } from '@/core/clock-plan/day-cost.ts'
import { heavyText } from '@/core/units/mass-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'

/** A session in one sentence, its length first: "5 h 50 min" and "hands busy for 1 h 30 min; 4.3 kg of dough in 5 tubs, 3 oven loads, 5 samples a mouth." */
export function dayCostSentence(cost: DayCost): { span: string; rest: string } {
  const counted = (count: number, one: string) => `${count} ${count === 1 ? one : `${one}s`}`
  const parts = [
    `${heavyText(cost.doughGrams, 1)} of dough in ${counted(cost.tubs, 'tub')}`,
    counted(cost.loads, 'oven load'),
    `${counted(cost.samplesPerSitting, 'sample')} a mouth`,
  ]
  return {
    span: durationText(cost.spanSeconds),
    rest: `, hands busy for ${durationText(cost.handsSeconds)}; ${parts.join(', ')}.`,
  }
}
