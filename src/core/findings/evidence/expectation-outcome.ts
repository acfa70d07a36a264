import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Better } from '@/core/trial/response.ts'
import type { Conclusion } from './conclusion-shape.ts'
import type { Asked, Shown, TooSmall } from './evidence-shape.ts'

/** Whether what was expected holds, from what is shown of the factor and what is too small; nothing shown leaves it open. */
export function expectationOutcome(
  { expected }: Asked,
  shown: readonly Shown[],
  tooSmall: TooSmall | Absent,
  better: Better,
): Conclusion['expectation'] {
  if (expected === null) return 'none'
  const within = isPresent(tooSmall) && tooSmall.allPairs
  const line = shown.find((one) => one.is === 'line')
  const bend = shown.find((one) => one.is === 'bend')
  if (expected === 'no-difference') {
    if (within) return 'held'
    return shown.length > 0 ? 'differs-instead' : 'not-settled'
  }
  if (expected === 'best-inside') {
    const good = better.is === 'lower' ? 'low' : 'high'
    if (bend?.inside) return bend.middle === good ? 'held' : 'opposite'
    if (line) return 'line-instead'
    return within ? 'too-small' : 'not-settled'
  }
  if (line) return line.goes === expected ? 'held' : 'opposite'
  if (shown.some((one) => one.is === 'pairs')) return 'held'
  if (bend?.inside) return 'inside-instead'
  return within ? 'too-small' : 'not-settled'
}
