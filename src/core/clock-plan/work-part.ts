import type { Step } from '@/core/trial/step.ts'

/** What must have ended before a part begins, and how long after it. */
export interface After {
  from: string
  seconds: number
  /** How much of it is for the oven's queue, beyond the method. */
  queuedSeconds: number
  earlySeconds: number
  lateSeconds: number
}

interface Part {
  id: string
  batchId: string
  step: Step
  repeat: number
  /** The doughs or pieces it is done to, one after another. */
  unitIds: string[]
  /** What it takes of the day's tasks, as `taskKey` names them. */
  taskKeys: string[]
  activeSeconds: number
  after: After[]
  /** Done to a whole dough, or to all of its pieces at once. */
  whole: boolean
  afterOven: boolean
  /** Done once for all doughs. */
  forAll: boolean
}

/** Something to do by hand; `over`: nothing but the moment at which a last wait is over. */
export interface HandsPart extends Part {
  what: 'work' | 'over'
}

/** Something to take out of the oven, with what the oven holds for it. */
export interface PullPart extends Part {
  what: 'pull'
  launchId: string
  places: number
  load: number
  celsius: number | undefined
  counted: boolean
  /** Where it stands in the rows of what is compared: pieces of one flight. */
  flight: number
  ageSeconds: number
  /** From the first hand to the launch by the method alone, as the level has it. */
  methodSeconds: number
}

export type WorkPart = HandsPart | PullPart
