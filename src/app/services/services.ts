import { createContext, useContext } from 'react'
import type { OpenNotebook } from '@/notebook/notebook.ts'

/** What the frame hands down to the places: the notebook, the clock, chance and new ids. Places have none of their own. */
export interface Services {
  notebook: OpenNotebook
  /** UTC milliseconds. */
  now: () => number
  /** The IANA zone the person is in. */
  zone: string
  newId: () => string
  /** A seed for a new trial: 0 to 2^32 - 1. */
  newSeed: () => number
}

export const ServicesContext = createContext<Services | null>(null)

/** The services of the running app. Throws outside the frame: a programmer's mistake. */
export function useServices(): Services {
  const services = useContext(ServicesContext)
  if (!services) throw new Error('useServices outside of the frame')
  return services
}
