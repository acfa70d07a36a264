import { createStore, type StoreApi } from 'zustand'
import { stretchedAxis } from '@/core/figure/stretched-axis.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { namingWhatStands } from '@/core/plan-edits/parts/what-stands.ts'
import { putBackParts } from '@/core/plan-edits/take-out/put-back-parts.ts'
import type { TakenOut } from '@/core/plan-edits/take-out/taken-out.ts'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { Level } from '@/core/trial/level.ts'
import { mergePlans } from '@/core/trial/merge-plans.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { KeptPlan } from '@/notebook/notebook.ts'
import { createPlanKeeper } from './plan-keeper.ts'

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

interface Undo {
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
  /** Where the page was last asked to go: a part's id, a field's name or a path of the plan; a new object for each ask. */
  jump: { to: string } | null
  change: (recipe: (plan: Plan) => Plan) => void
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
  meetKitchen: (kitchen: readonly KitchenThing[]) => void
  /** Another tab or place changed the trial, which is at this revision now: its plan is merged with what changed here. */
  meet: (plan: Plan, trialRevision: number) => void
  /** Judges and writes what waits, now: at leaving the page, or before a session is dealt. */
  flush: () => Promise<void>
  /** Gives up what could not be kept: the page shows what the notebook has. */
  giveUp: () => void
}

const judgeWaitMilliseconds = 400
const calmWaitMilliseconds = 1000

/**
 * The state of one open Plan page. A valid change goes to the notebook shortly after the last key, an unfinished text
 * goes to the drafts; both at once when the page is left.
 */
export function createPlanPage(
  first: { plan: Plan; trialRevision: number },
  drafts: Record<string, string>,
  kitchen: readonly KitchenThing[],
  keeping: PlanKeeping,
): StoreApi<PlanPage> {
  let judgeTimer: ReturnType<typeof setTimeout> | undefined
  let calmTimer: ReturnType<typeof setTimeout> | undefined

  return createStore<PlanPage>((set, get) => {
    const judge = () => {
      clearTimeout(judgeTimer)
      const { plan: judged, kitchen: things, troubles } = get()
      const found = keeping.judge(judged, things)
      // The same list stays when it says the same, so that what shows it need not be drawn again.
      if (JSON.stringify(found) !== JSON.stringify(troubles)) set({ troubles: found })
    }
    const show = (next: Plan) => {
      clearTimeout(calmTimer)
      if (!stretchedAxis(get().calmLevels, next.levels))
        return set({ plan: next, calmLevels: next.levels })
      set({ plan: next })
      calmTimer = setTimeout(() => set({ calmLevels: get().plan.levels }), calmWaitMilliseconds)
    }
    const keeper = createPlanKeeper(first, keeping, {
      ...{ get, set },
      show: (next) => {
        show(next)
        judge()
      },
    })
    const change = (recipe: (plan: Plan) => Plan) => {
      const next = recipe(get().plan)
      if (next === get().plan) return
      const refused = keeping.refuses(get().plan, next)
      if (refused !== get().refused) set({ refused })
      if (refused !== null) return
      show(next)
      clearTimeout(judgeTimer)
      judgeTimer = setTimeout(judge, judgeWaitMilliseconds)
      keeper.planChanged()
    }

    const draft = (field: string, text: string | null) => {
      if (text === (get().drafts[field] ?? null)) return
      set((page) => ({ drafts: withDraft(page.drafts, field, text) }))
      keeper.draftsChanged()
    }

    const dropDrafts = (of: string) => {
      for (const field of Object.keys(get().drafts)) if (field.includes(of)) draft(field, null)
    }

    return {
      plan: first.plan,
      kitchen,
      calmLevels: first.plan.levels,
      troubles: keeping.judge(first.plan, kitchen),
      drafts,
      unfinished: {},
      newRevision: null,
      notKept: null,
      clash: null,
      waiting: false,
      refused: null,
      undo: null,
      jump: null,
      change,
      changeSaid: (said, recipe, replaces, typed = {}) => {
        const { plan: before, drafts: textsBefore } = get()
        if (replaces !== undefined) dropDrafts(replaces)
        change(recipe)
        for (const [field, text] of Object.entries(typed)) draft(field, text)
        const { plan: after, drafts: textsAfter } = get()
        const touched = Object.keys({ ...textsBefore, ...textsAfter }).filter(
          (field) => textsBefore[field] !== textsAfter[field],
        )
        const texts = Object.fromEntries(
          touched.map((field) => [field, textsBefore[field] ?? null]),
        )
        if (after !== before) set({ undo: { said, restore: putBackParts(before, after), texts } })
      },
      takeOut: ({ id, what, plan: next, restore }) => {
        dropDrafts(id)
        change(() => next)
        set({ undo: { said: `Removed: ${what}`, restore, texts: {} } })
      },
      takeBack: () => {
        const { undo } = get()
        set({ undo: null })
        if (!undo) return
        change((now) => namingWhatStands(undo.restore(now)))
        for (const [field, text] of Object.entries(undo.texts)) draft(field, text)
      },
      dropUndo: () => set({ undo: null }),
      takeOther: () => {
        const { clash } = get()
        set({ clash: null })
        if (clash) change((now) => mergePlans(clash.here, now, clash.other).plan)
      },
      dropClash: () => set({ clash: null }),
      dropRefused: () => set({ refused: null }),
      draft,
      markUnfinished: (field, label) =>
        set((page) => ({ unfinished: withDraft(page.unfinished, field, label) })),
      jumpTo: (to) => set({ jump: { to } }),
      meetKitchen: (met) => {
        // The notebook reads it anew at every keeping: an equal one must not set everything computing again.
        if (JSON.stringify(met) === JSON.stringify(get().kitchen)) return
        set({ kitchen: met })
        judge()
      },
      meet: keeper.meet,
      flush: async () => {
        judge()
        await keeper.flush()
      },
      giveUp: keeper.giveUp,
    }
  })
}

function withDraft(drafts: Record<string, string>, field: string, text: string | null) {
  const next = { ...drafts }
  if (text === null) delete next[field]
  else next[field] = text
  return next
}
