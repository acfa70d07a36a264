import type { Step } from '@/core/trial/step.ts'

export type UsualStep = Omit<Step, 'id'>

const minutes = 60
const clock = { by: 'clock' } as const

/** A step with a tolerance that is the same early and late; hands, wait and tolerance in minutes. */
function step(
  { kind, name, per }: Pick<Step, 'kind' | 'name' | 'per'>,
  [hands, wait, within]: readonly [number, number, number],
  uses: Step['uses'] = ['hands'],
): UsualStep {
  return {
    ...{ kind, name, per, repeats: 1, endsBy: clock, uses },
    ...{ handsSeconds: hands * minutes, waitSeconds: wait * minutes },
    ...{ earlySeconds: within * minutes, lateSeconds: within * minutes },
  }
}

/** Steps of usual breads, times in minutes: common practice, without a source. */
export const usualSteps = {
  /** One starter for all doughs, the evening before. */
  feed: {
    ...step({ kind: 'feed', name: 'Feed the levain', per: 'batch' }, [3, 8 * 60, 60]),
    once: true,
  },
  mix: (hands: number, wait: number) =>
    step({ kind: 'mix', name: 'Mix', per: 'batch' }, [hands, wait, 5]),
  rest: (wait: number) => step({ kind: 'rest', name: 'Rise', per: 'batch' }, [0, wait, 10], []),
  fold: (repeats: number) => ({
    ...step({ kind: 'fold', name: 'Fold', per: 'batch' }, [1, 30, 5]),
    repeats,
  }),
  shape: (hands: number) => step({ kind: 'ball', name: 'Shape', per: 'piece' }, [hands, 0, 5]),
  proof: (wait: number) => step({ kind: 'proof', name: 'Proof', per: 'piece' }, [0, wait, 10], []),
  flatten: step({ kind: 'open', name: 'Roll out', per: 'piece' }, [1, 0, 3]),
  boil: step({ kind: 'top', name: 'Boil and drain', per: 'piece' }, [2, 0, 3]),
  bake: (celsius: number, wait: number) => ({
    ...step({ kind: 'bake', name: 'Bake', per: 'piece' }, [1, wait, 2], ['oven']),
    celsius,
  }),
  cool: (wait: number) =>
    step({ kind: 'cool', name: 'Cool', per: 'piece' }, [0, wait, wait / 2], []),
  cut: step({ kind: 'cut', name: 'Cut', per: 'piece' }, [2, 0, 30]),
} satisfies Record<string, UsualStep | ((...minutes: number[]) => UsualStep)>
