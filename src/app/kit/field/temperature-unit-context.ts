import { createContext } from 'react'
import type { TemperatureUnit } from './temperature-words.ts'

/** The unit a person reads and types temperatures in; the frame sets it from the settings, on a first page that writes none. */
export const TemperatureUnitContext = createContext<TemperatureUnit>('celsius')
