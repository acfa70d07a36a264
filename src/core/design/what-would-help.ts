import { type Detectable, detectable, type TrialDesign } from './detectable.ts'

export interface WhatWouldHelp {
  now: Detectable
  anotherSession: Detectable
  twoMoreTasters: Detectable
  /** The same range with one level less; null with two levels. */
  oneLevelLess: Detectable | null
}

/** What the design can detect as it is, and with another session, two more tasters, or one level less. */
export function whatWouldHelp(design: TrialDesign): WhatWouldHelp {
  return {
    now: detectable(design),
    anotherSession: detectable({ ...design, sessions: design.sessions + 1 }),
    twoMoreTasters: detectable({ ...design, tasters: design.tasters + 2 }),
    oneLevelLess: design.levels > 2 ? detectable(lessOne(design)) : null,
  }
}

function lessOne(design: TrialDesign): TrialDesign {
  const levels = design.levels - 1
  const values = design.levelValues
  if (!values) return { ...design, levels }
  const first = Math.min(...values)
  const last = Math.max(...values)
  const apart = (last - first) / (levels - 1)
  return {
    ...design,
    levels,
    levelValues: Array.from({ length: levels }, (_, index) => first + index * apart),
  }
}
