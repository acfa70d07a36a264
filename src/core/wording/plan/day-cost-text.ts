import type { DayCost } from '@/core/clock-plan/day-cost.ts'
import { heavyText, massText } from '@/core/units/mass-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'

/** What one session asks of dough, room, hands, oven and mouths, as terms with their amounts. */
export function dayCostRows(cost: DayCost): [string, string][] {
  const rows: [string, string][] = [
    ['Dough', `${heavyText(cost.doughGrams, 2)} in ${counted(cost.tubs, 'tub')}`],
    ['Pieces', String(cost.pieces)],
    ['Hands-on', durationText(cost.handsSeconds)],
    ['Oven', `${durationText(cost.ovenSeconds)} in ${counted(cost.loads, 'load')}`],
    ['From first hand to last cut', `about ${durationText(cost.spanSeconds)}`],
    ['Samples a mouth', String(cost.samplesPerSitting)],
  ]
  if (cost.fridgePlaces > 0) rows.push(['Places in the fridge', String(cost.fridgePlaces)])
  if (cost.gramsPerMouth !== null)
    rows.push(['Eaten by each', `about ${massText(cost.gramsPerMouth, 0)}`])
  return rows
}

const counted = (count: number, what: string) => `${count} ${count === 1 ? what : `${what}s`}`
