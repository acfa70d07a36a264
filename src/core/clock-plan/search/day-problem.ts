/**
 * One trial day as tasks to place on a clock. All moments and lengths are whole elapsed seconds from one origin instant, so that
 * a night in which summer time ends or begins is a longer or shorter block and nothing else.
 */
export interface DayProblem {
  tasks: TaskToPlace[]
  /** Waits of the method, from the end of one task's hands to the beginning of the next. */
  waits: Wait[]
  /** What must come before what whatever the waits: the dealt orders, loads in turn. */
  orders: Order[]
  /** How many units of each resource there are: pairs of hands, mixers, oven places, fridge room. */
  capacities: Record<string, number>
  /** What is taken from one task to another: a place in the oven from launch to pull, a shelf. */
  stays: Stay[]
  /** When part of a resource is not to be had: quiet hours, the hours without a helper. */
  blocks: Block[]
  /** What should be equal over the lines: ages at baking, minutes from oven to mouth. */
  equal: EqualGroup[]
  window: Window
  /** What the log says was done, and when. Nothing else may begin before `nowSeconds`. */
  done: { task: string; atSeconds: number }[]
  nowSeconds: number | null
  oven: { heatSecondsPerKelvin: number; coolSecondsPerKelvin: number }
}

export interface TaskToPlace {
  id: string
  /** The line it belongs to, and the step: for mends and words. */
  line: string
  step: string
  activeSeconds: number
  uses: { resource: string; count: number }[]
}

export interface Wait {
  from: string
  to: string
  seconds: number
  earlySeconds: number
  lateSeconds: number
  /** It is off by no more quarters of its tolerance than this, whatever others are allowed: a bake. */
  mostRung?: number
}

export interface Order {
  from: string
  to: string
  /** Counted from the beginning of the first, not from its end. */
  fromBegin?: boolean
  /** It is part of the oven's dealt order, which a mend may give up. */
  ofOven?: boolean
  /** Below zero: no more than so long after, read from `to` to `from`. */
  seconds: number
}

export interface Stay {
  resource: string
  count: number
  from: string
  to: string
  /** How long it is still taken after the last task, such as while the oven recovers. */
  afterSeconds: number
  celsius?: number
}

export interface Block {
  resource: string
  count: number
  fromSeconds: number
  toSeconds: number
}

export interface EqualGroup {
  name: string
  toleranceSeconds: number
  /** `lessSeconds`: what of it is meant to differ, such as the longer way of a level that rests longer. */
  spans: {
    from: string
    to: string
    fromEnd?: boolean
    toEnd?: boolean
    lessSeconds?: number
  }[]
}

export interface Window {
  startSeconds: number
  /** The day begins then and at no other time; else no sooner. */
  startFixed?: boolean
  endSeconds?: number
  endFixed?: boolean
}

/** Where each task begins, by its id. */
export type Placed = Record<string, number>
