import { create } from 'zustand'

interface CurrentLevel {
  levelId: string | null
  pick: (levelId: string | null) => void
}

/** The tab that is picked on the level rail. It passes with the page and is never stored. */
export const useCurrentLevel = create<CurrentLevel>((set) => ({
  levelId: null,
  pick: (levelId) => set({ levelId }),
}))
