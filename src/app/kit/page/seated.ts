import { create } from 'zustand'

interface Seated {
  /** True while a taster sits at this device: their page stands alone, without the app's head and places. */
  seated: boolean
  seat: (seated: boolean) => void
}

/** Whether a taster's page has the whole screen. Passing: what is kept of the seat is the place's. */
export const useSeated = create<Seated>((set) => ({
  seated: false,
  seat: (seated) => set({ seated }),
}))
