import { createContext, useContext } from 'react'

/** True inside of a fold, whose own line is the heading of the section that stands in it. */
export const InFold = createContext(false)

export const useInFold = () => useContext(InFold)
