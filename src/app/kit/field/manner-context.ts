import { createContext } from 'react'
import { type Manner, plainManner } from '@/core/units/manner.ts'

/** How the person reads and types figures; the frame sets it from the settings, so that what shows them is drawn anew. */
export const MannerContext = createContext<Manner>(plainManner)
