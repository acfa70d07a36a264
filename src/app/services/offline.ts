import { createStore } from 'zustand'

interface Offline {
  /** True once every place opens without a network. */
  ready: boolean
  /** Takes the newer version that waits, and opens the page anew; null while there is none. */
  update: (() => Promise<void>) | null
  /** True when another window has taken a newer version: this page still runs the older one. */
  taken: boolean
  /** Why the browser does not keep the program; null where it does, or was not asked. */
  failure: string | null
}

/** Whether the program is kept for days without a network, and whether a newer one waits. */
export const offline = createStore<Offline>(() => ({
  ...{ ready: false, update: null, taken: false, failure: null },
}))
