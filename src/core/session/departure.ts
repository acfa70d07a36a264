import type { Unit } from './line.ts'

/** Something done differently from the plan, as a code with its numbers; seconds and grams. */
export type Departure =
  | { what: 'dough-order'; stepId: string; planned: string[]; done: string[]; swaps: number }
  | { what: 'bake-order'; flightId: string; planned: string[]; done: string[]; swaps: number }
  | {
      what: 'wait'
      unit: Unit
      batchId: string
      levelId: string | null
      stepId: string
      repeat: number
      plannedSeconds: number
      doneSeconds: number
      toleranceSeconds: number
    }
  | {
      what: 'weight'
      batchId: string
      levelId: string | null
      ingredientId: string
      prefermentId: string | null
      plannedGrams: number
      doneGrams: number
      offPercent: number
    }
  | {
      what: 'step-missing'
      unit: Unit
      batchId: string
      levelId: string | null
      stepId: string
      repeat: number
    }
  | { what: 'step-extra'; unit: Unit; stepId: string; repeat: number; planned: number }
