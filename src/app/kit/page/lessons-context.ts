import { createContext } from 'react'

/** The trials whose answer is covered on this device, since a lesson on them is under way; the frame sets it from the settings. */
export const LessonsContext = createContext<readonly string[]>([])
