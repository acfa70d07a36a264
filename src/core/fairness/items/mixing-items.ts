import type { LearnedWork } from '@/core/dough-temperature/learn-mixing-work.ts'
import { mixerOfPlan } from '@/core/dough-temperature/mixing-work.ts'
import type { UnwateredDoughs } from '@/core/dough-temperature/unwatered-doughs.ts'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { mixerFit } from '@/core/kitchen/mixer-fit.ts'
import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { madeItem } from './made-item.ts'

/**
 * Dough temperature with one water for all, in degrees and in minutes of proof: the rider of every factor that changes the
 * dough. With the water matched it is fine; where a dough takes no water, how far apart the doughs come out all the same. Beside it each batch whose own water would be past what its leaven bears.
 */
export function waterItems(
  plan: Plan,
  kitchen: readonly KitchenThing[],
  learned: LearnedWork | null,
): FairnessItem[] {
  if (!mixedApart(plan)) return []
  const path = '/temperature'
  const water = waterPlan(plan, kitchen, learned)
  if (!water.ok) {
    if (water.reason === 'no-batch') return []
    if (water.reason === 'no-water-at-mix') return [unwateredItem(water, path)]
    const data = { state: 'unknown' as const, minutes: null, minutesEnds: null }
    const remedies = [{ code: 'enter-temperatures' as const }]
    return [madeItem('water-temperature', { size: 0.5, counts: false, data, remedies, path })]
  }
  const matched = plan.temperature?.matched === true
  const perLevel = water.batches.flatMap(({ levelId, oneWaterDoughCelsius }) =>
    levelId === null ? [] : [{ levelId, value: oneWaterDoughCelsius }],
  )
  const state = matched ? ('matched' as const) : ('one-water' as const)
  const { spreadMinutes: minutes, spreadMinutesEnds: minutesEnds } = water
  const found = { data: { state, minutes, minutesEnds }, perLevel, path: `${path}/matched` }
  const rider = madeItem('water-temperature', {
    ...found,
    size: water.spreadCelsius,
    remedies: [{ code: 'match-water' }],
  })
  const past = water.batches.filter(({ pastLimitsCelsius }) => pastLimitsCelsius !== 0)
  const worst = past.toSorted(
    (a, b) => Math.abs(b.pastLimitsCelsius) - Math.abs(a.pastLimitsCelsius),
  )[0]
  const items: FairnessItem[] = [matched ? { ...rider, severity: 'fine', remedies: [] } : rider]
  if (worst) {
    const { levelId, waterCelsius, limits } = worst
    const ends = { low: limits.leastCelsius, high: limits.mostCelsius }
    const data = { levelId, waterCelsius, ...ends }
    const size = Math.abs(worst.pastLimitsCelsius)
    items.push(madeItem('water-past-limits', { size, data, path }))
  }
  return items
}

/** Dough temperatures that no water can match, because some or all doughs take none at the mix. */
function unwateredItem(unwatered: UnwateredDoughs, path: string): FairnessItem {
  const { doughs, spreadCelsius, spreadMinutes: minutes, spreadMinutesEnds } = unwatered
  const none = doughs.every(({ waterCelsius }) => waterCelsius === null)
  const state = none ? ('no-water' as const) : ('some-water' as const)
  return madeItem('water-temperature', {
    ...{ size: spreadCelsius, data: { state, minutes, minutesEnds: spreadMinutesEnds }, path },
    perLevel: doughs.flatMap(({ levelId, doughCelsius }) =>
      levelId === null ? [] : [{ levelId, value: doughCelsius }],
    ),
    remedies: [{ code: 'warm-cold-ingredients' }],
  })
}

/** Doughs that the mixer mixes badly, too little or too much of it: the worst one. */
export function mixerItems(
  plan: Plan,
  kitchen: readonly KitchenThing[],
  sheet: WeighSheet,
): FairnessItem[] {
  const mixer = mixerOfPlan(plan, kitchen)
  if (!mixer) return []
  const off = sheet.batches.flatMap(({ doughGrams }) => {
    const fit = mixerFit(mixer, doughGrams)
    if (fit === 'fits') return []
    const limitGrams = fit === 'too-little' ? mixer.leastDoughGrams : mixer.mostDoughGrams
    return [{ fit, doughGrams, limitGrams, size: Math.abs(doughGrams - limitGrams) }]
  })
  const [worst] = off.toSorted((a, b) => b.size - a.size)
  if (!worst) return []
  const { size, ...data } = worst
  const code = data.fit === 'too-little' ? ('larger-batches' as const) : ('two-mixes' as const)
  return [madeItem('mixer-size', { size, data, remedies: [{ code }], path: '/formula/batchSize' })]
}
