import { create } from 'zustand'

interface UncoveredTrial {
  /** The trial whose Plan and Bench its baker has uncovered; null while every sealed trial is covered. */
  trialId: string | null
  uncover: (trialId: string) => void
  cover: () => void
}

/**
 * The look of a baker who does not taste: said once, it holds from press to press until a taster sits down at this device, or
 * the page is loaded again. It is never stored.
 */
export const useUncoveredTrial = create<UncoveredTrial>((set) => ({
  trialId: null,
  uncover: (trialId) => set({ trialId }),
  cover: () => set({ trialId: null }),
}))
