import { create } from 'zustand'
import type { Line } from '@/exchange/services.ts'

interface Lines {
  /** By the trial of an own table, or the name of a joined one: how its line to the hub stands in this window. */
  lines: Readonly<Record<string, Line>>
}

/** Passing: only the window that works the tables knows it; in another nothing stands. */
export const useLines = create<Lines>(() => ({ lines: {} }))

export function tellLine(key: string, line: Line | null): void {
  useLines.setState(({ lines }) => {
    const { [key]: _, ...others } = lines
    return { lines: line === null ? others : { ...others, [key]: line } }
  })
}
