import { useMemo } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { cupSheet } from '@/core/weighing/cup-sheet.ts'
import { type WeighSheet, weighSheet } from '@/core/weighing/weigh-sheet.ts'

/** The weigh sheet the bench works by: where cups were shuffled the same grams for every dough, its cup apart. */
export function useBenchSheet(): WeighSheet {
  const { whole, plan, unknown } = useBench()
  return useMemo(() => {
    const sheet = weighSheet(plan, whole.kitchen)
    const cups = unknown ? cupSheet(sheet) : null
    return cups?.ok ? cups.same : sheet
  }, [plan, whole.kitchen, unknown])
}
