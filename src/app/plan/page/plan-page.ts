import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { TakenOut } from '@/core/plan-edits/take-out/take-out.ts'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { KeptPlan } from '@/notebook/notebook.ts'
import type { PlanPartId } from './part-names.ts'

/** Where the page keeps things: the notebook and the clock, narrowed to what a plan needs. */
export interface PlanKeeping {
  /** Keeps the plan as it is changed from `base`, the one it began from. */
  keepPlan: (plan: Plan, base: Plan) => Promise<KeptPlan>
  keepDrafts: (drafts: Record<string, string>) => Promise<void>
  /** What is wrong with the plan as it stands, in words, by the JSON Pointer of the place. */
  judge: (plan: Plan, kitchen: readonly KitchenThing[]) => PlanTrouble[]
  /** Why a change may not be made, in words; null when it may. */
  refuses: (before: Plan, next: Plan) => string | null
}

/** One thing to mend (stop) or to think about (ask), and where it stands in the plan. */
export interface PlanTrouble {
  path: string
  severity: 'stop' | 'ask'
  text: string
}

export interface Undo {
  said: string
  restore: (plan: Plan) => Plan
  /** The unfinished texts that the change dropped or made, as they were before it; null where there was none. */
  texts: Record<string, string | null>
}

/** Why a write failed, and whether the page went back to what the notebook has. */
export interface NotKept {
  reason: FailureReason | null
  detail: string
  rolledBack: boolean
}

/** Whether something is still to be kept: what went from the page again waits for nothing. */
export const isUnkept = (notKept: NotKept | null): boolean =>
  notKept !== null && !notKept.rolledBack

/** Fields that another window changed at the same time: what stands here, and the plan with the other's word in them. */
export interface PlanClash {
  paths: string[]
  here: Plan
  other: Plan
}

export interface PlanPage {
  plan: Plan
  kitchen: readonly KitchenThing[]
  /** The levels as rail and heads show them: a number of which half is typed moves nothing until the typing rests. */
  calmLevels: readonly Level[]
  /** Judged when the typing pauses: between two digits stands many a number that nobody means. */
  troubles: PlanTrouble[]
  /** Typed but unfinished text by field; a field that is not here shows the plan's value. */
  drafts: Record<string, string>
  /** Fields on the page that hold such a text, with their labels. */
  unfinished: Record<string, string>
  /** Set when a change went into the next revision because a session runs the one before. */
  newRevision: number | null
  /** Why the last write failed; null once it is kept. */
  notKept: NotKept | null
  /** What another window changed at once with this one, until one of both is chosen. */
  clash: PlanClash | null
  /** True while something typed is not on the disk yet. */
  waiting: boolean
  /** Why the last change was not made, in words: the plan stands as it was. */
  refused: string | null
  /** What was just done, in words, and how to take it back. */
  undo: Undo | null
  /** The parts of the page that stand open. */
  opened: readonly PlanPartId[]
  /** Where the page was last asked to go: a part's id, a field's name or a path of the plan; a new object for each ask. */
  jump: { to: string } | null
  change: (recipe: (plan: Plan) => Plan) => void
  /** Does what follows from a key once the frame with the key is out (`after-key`); until then nothing counts as kept. */
  afterKey: (work: () => void) => void
  /** A change that is said at the foot of the page, where it can be taken back; unfinished texts of what it replaces go. */
  changeSaid: (
    said: string,
    recipe: (plan: Plan) => Plan,
    replaces?: string,
    typed?: Record<string, string>,
  ) => void
  takeOut: (taken: TakenOut) => void
  takeBack: () => void
  dropUndo: () => void
  /** Takes the other window's word in the fields of the clash. */
  takeOther: () => void
  dropClash: () => void
  dropRefused: () => void
  draft: (field: string, text: string | null) => void
  /** A field came to hold unfinished text (its label), or no longer does (null). */
  markUnfinished: (field: string, label: string | null) => void
  jumpTo: (to: string) => void
  /** Opens or shuts a part of the page. */
  turn: (part: PlanPartId, open: boolean) => void
  meetKitchen: (kitchen: readonly KitchenThing[]) => void
  /** Another tab or place changed the trial, which is at this revision now: its plan is merged with what changed here. */
  meetKept: (plan: Plan, trialRevision: number) => void
  /** Judges and writes what waits, now: at leaving the page, or before a session is dealt. */
  flush: () => Promise<void>
  /** Gives up what could not be kept: the page shows what the notebook has. */
  giveUp: () => void
}
