import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Remedy } from '@/core/fairness/remedy.ts'
import { benchShift } from '@/core/trial/bench-shift.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { DoseAdvice } from '@/core/weighing/dose-advice.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { madeItem } from './made-item.ts'
import { smallestGap } from './smallest-gap.ts'

/**
 * What the scales do to the levels: the two neighbours they keep apart worst, and every ingredient too small for them, with
 * the stock or dry mix that mends it. What is shared already is fine.
 */
export function weighingItems(plan: Plan, sheet: WeighSheet): FairnessItem[] {
  const { acts } = plan.factor
  const items: FairnessItem[] = []
  if (sheet.scales.length === 0) {
    const remedies = [{ code: 'name-scale' as const }]
    const path = '/kitchenIds'
    return [madeItem('no-scale', { size: 1, counts: false, data: {}, remedies, path })]
  }
  const blurs = sheet.neighbours.filter(({ gap }) => gap > 0)
  const [worst] = blurs.toSorted((a, b) => b.blur / b.gap - a.blur / a.gap)
  if (worst) {
    const { lowerLevelId, upperLevelId, gap, blur } = worst
    const advised = sheet.advice.find(
      ({ ingredientId }) => 'ingredientId' in acts && acts.ingredientId === ingredientId,
    )
    const remedies: Remedy[] = [
      ...(advised ? shareDose(advised) : []),
      { code: 'finer-scale' },
      { code: 'levels-further-apart' },
      { code: 'larger-batches' },
    ]
    const data = { lowerLevelId, upperLevelId, gap, blur }
    items.push(madeItem('levels-blur', { size: blur / gap, data, remedies, path: '/levels' }))
  }
  for (const advice of sheet.advice) {
    const { ingredientId, relativeUncertainty, smallestGrams } = advice
    const remedies: Remedy[] = [...shareDose(advice), { code: 'finer-scale' }]
    const data = { ingredientId, smallestGrams, shared: false }
    const at = plan.formula.ingredients.findIndex(({ id }) => id === ingredientId)
    items.push(
      madeItem('coarse-dose', {
        ...{ size: relativeUncertainty * 100, data, remedies, subject: ingredientId },
        path: `/formula/ingredients/${at}`,
      }),
    )
  }
  for (const [at, { ingredientId }] of plan.sharedDoses.entries()) {
    const answers = sheet.doses.filter((dose) => dose.ingredientId === ingredientId)
    const made = answers.filter((dose) => dose.ok)
    if (made.length < answers.length) {
      items.push(...singlyItem(sheet, ingredientId, `/sharedDoses/${at}`))
      continue
    }
    const own = Math.max(0, ...made.map(({ ownRelativeUncertainty }) => ownRelativeUncertainty))
    const data = { ingredientId, smallestGrams: null, shared: true }
    items.push(
      madeItem('coarse-dose', {
        ...{ size: own * 100, data, subject: ingredientId },
        ...{ remedies: [{ code: 'finer-scale' as const }], path: `/sharedDoses/${at}` },
      }),
    )
  }
  return items
}

/** An ingredient that was to be shared but cannot be, and is so weighed singly: how coarsely, in its worst batch. */
function singlyItem({ batches }: WeighSheet, ingredientId: string, path: string): FairnessItem[] {
  const lines = batches
    .flatMap((batch) => batch.lines)
    .filter((line) => line.ingredientId === ingredientId && line.what !== 'dose')
    .filter(({ targetGrams }) => targetGrams > 0)
  if (lines.length === 0) return []
  const size = Math.max(...lines.map(({ relativeUncertainty }) => relativeUncertainty ?? 0)) * 100
  const smallestGrams = Math.min(...lines.map(({ targetGrams }) => targetGrams))
  const data = { ingredientId, smallestGrams, shared: false }
  const remedies = [{ code: 'finer-scale' as const }]
  return [madeItem('coarse-dose', { size, data, remedies, subject: ingredientId, path })]
}

/** The stock or dry mix that mends a coarse dose, where the scales can make it. */
function shareDose({ ingredientId, better, dryMix, stock }: DoseAdvice): Remedy[] {
  const made = better === 'stock' ? stock : dryMix
  return made.ok ? [{ code: 'share-dose', ingredientId, by: better }] : []
}

/** What 5 g and 10 g of bench flour, or 5 g of water from wet hands, worked into a piece do to the level they move most. */
export function benchItems(plan: Plan): FairnessItem[] {
  const gap = smallestGap(plan)
  const shifts = benchShift(plan).flatMap(({ levelId, value, intoGrams, flour, water }) => {
    const at = (list: { grams: number; level: number }[], grams: number) =>
      (list.find((one) => one.grams === grams)?.level ?? value) - value
    const moved = { fiveGrams: at(flour, 5), tenGrams: at(flour, 10), wetFive: at(water, 5) }
    return [{ levelId, intoGrams, ...moved }]
  })
  const [worst] = shifts.toSorted((a, b) => Math.abs(b.fiveGrams) - Math.abs(a.fiveGrams))
  if (!worst || gap === null || worst.fiveGrams === 0) return []
  const { levelId: _, ...moved } = worst
  return [
    madeItem('bench-flour', {
      ...{ size: Math.abs(worst.fiveGrams) / gap, data: { ...moved, gap }, path: '/levels' },
      perLevel: shifts.map(({ levelId, fiveGrams }) => ({ levelId, value: fiveGrams })),
      remedies: [{ code: 'weigh-bench-flour' }, { code: 'oil-or-water-on-bench' }],
    }),
  ]
}
