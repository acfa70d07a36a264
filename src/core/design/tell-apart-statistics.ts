import type { Sides } from '@/core/statistics/discrimination/tell-apart.ts'
import type { TellApartTest } from '@/core/statistics/discrimination/tell-apart-tests.ts'
import type { TellApart } from '@/core/trial/plan-record.ts'

/** How the answers of each tell-apart test are judged: in a paired comparison nobody says beforehand which has more. */
export const tellApartStatistics: Readonly<
  Record<TellApart['test'], { test: TellApartTest; sides: Sides }>
> = {
  triangle: { test: 'triangle', sides: 'one-sided' },
  'duo-trio': { test: 'duo-trio', sides: 'one-sided' },
  paired: { test: 'paired-comparison', sides: 'two-sided' },
}
