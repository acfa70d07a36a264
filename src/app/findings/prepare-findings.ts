import { fetchChartsAhead } from '@/app/findings/parts/lazy-charts.ts'
import { workOutAhead } from '@/app/worker/findings-ahead.ts'
import { mustSayLook } from '@/core/seal/must-say-look.ts'
import { sealed } from '@/core/seal/sealed.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/**
 * Makes what Findings of a trial shows ready: the charts' program is fetched, the answer worked out. Nothing is done
 * for a trial that is sealed, and nothing worked out that would be a look before the end.
 */
export function prepareFindings(whole: WholeTrial): void {
  if (sealed(whole)) return
  void fetchChartsAhead()
  if (!mustSayLook(whole)) workOutAhead(whole)
}
