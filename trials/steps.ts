import type { Step } from '@/core/trial/step.ts'

const minutes = 60

type Wanted = Pick<Step, 'kind' | 'name'> &
  Partial<Pick<Step, 'per' | 'repeats' | 'uses' | 'celsius' | 'endsBy'>> & {
    handsMinutes: number
    waitMinutes: number
    toleranceMinutes: number
  }

/** A step of a sample's method, with the usual where nothing is said: per batch, once, by hand, ended by the clock. */
export function stepOf(newId: () => string, wanted: Wanted): Step {
  const { handsMinutes, waitMinutes, toleranceMinutes, ...said } = wanted
  return {
    id: newId(),
    per: 'batch',
    repeats: 1,
    uses: ['hands'],
    endsBy: { by: 'clock' },
    ...said,
    handsSeconds: handsMinutes * minutes,
    waitSeconds: waitMinutes * minutes,
    earlySeconds: toleranceMinutes * minutes,
    lateSeconds: toleranceMinutes * minutes,
  }
}
