import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'

export type NextStep = 'mend' | Conclusion['next'][number]

/** What to do next after a trial, the most pressing first: mend the fairness items that are left open, then what its main conclusion asks for. */
export function nextSteps(
  document: FindingsDocument,
  circumstances: { toMend: number },
): NextStep[] {
  const after = document.responses[0]?.conclusion.next ?? ['repeat']
  return circumstances.toMend > 0 ? ['mend', ...after] : after
}
