import { createStore, type StoreApi } from 'zustand'
import { stretchedAxis } from '@/core/figure/stretched-axis.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { putBackParts } from '@/core/plan-edits/take-out/put-back-parts.ts'
import type { TakenOut } from '@/core/plan-edits/take-out/taken-out.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { KeptPlan } from '@/notebook/notebook.ts'

/** Where the page keeps things: the notebook and the clock, narrowed to what a plan needs. */
export interface PlanKeeping {
  keepPlan: (plan: Plan) => Promise<KeptPlan>
  keepDrafts: (drafts: Record<string, string>) => Promise<void>
  now: () => number
  /** What is wrong with the plan as it stands, in words, by the JSON Pointer of the place. */
  judge: (plan: Plan, kitchen: readonly KitchenThing[]) => PlanTrouble[]
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
  /** The words of the last failed write; what was typed still stands on the page. */
  notKept: string | null
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
  draft: (field: string, text: string | null) => void
  /** A field came to hold unfinished text (its label), or no longer does (null). */
  markUnfinished: (field: string, label: string | null) => void
  jumpTo: (to: string) => void
  meetKitchen: (kitchen: readonly KitchenThing[]) => void
  /** Another tab or place changed the plan: taken over when it is newer and nothing here waits to be kept. */
  meet: (plan: Plan) => void
  /** Judges and writes what waits, now: at leaving the page, or before a session is dealt. */
  flush: () => Promise<void>
}

const judgeWaitMilliseconds = 400
const calmWaitMilliseconds = 1000
const planWaitMilliseconds = 200
const draftWaitMilliseconds = 150

/**
 * The state of one open Plan page. A valid change goes to the notebook shortly after the last key, an unfinished text
 * goes to the drafts; both at once when the page is left. One write runs at a time, so that a plan in use makes one
 * next revision and not two.
 */
export function createPlanPage(
  plan: Plan,
  drafts: Record<string, string>,
  kitchen: readonly KitchenThing[],
  keeping: PlanKeeping,
): StoreApi<PlanPage> {
  let judgeTimer: ReturnType<typeof setTimeout> | undefined
  let planTimer: ReturnType<typeof setTimeout> | undefined
  let draftTimer: ReturnType<typeof setTimeout> | undefined
  let calmTimer: ReturnType<typeof setTimeout> | undefined
  let planWaits = false
  let draftsWait = false
  let writing: Promise<void> = Promise.resolve()

  return createStore<PlanPage>((set, get) => {
    const keepPlan = async () => {
      clearTimeout(planTimer)
      if (!planWaits) return
      planWaits = false
      try {
        const kept = await keeping.keepPlan({ ...get().plan, at: keeping.now() })
        const { id, revision, at } = kept.plan
        set((page) => ({
          plan: { ...page.plan, id, revision, at },
          newRevision: kept.newRevision ? revision : page.newRevision,
          notKept: null,
        }))
      } catch (error) {
        planWaits = true
        set({ notKept: error instanceof Error ? error.message : String(error) })
      }
    }
    const keepDrafts = async () => {
      clearTimeout(draftTimer)
      if (!draftsWait) return
      draftsWait = false
      try {
        await keeping.keepDrafts(get().drafts)
      } catch (error) {
        draftsWait = true
        set({ notKept: error instanceof Error ? error.message : String(error) })
      }
    }
    const write = (work: () => Promise<void>) => {
      writing = writing.then(work)
      return writing
    }
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
    const change = (recipe: (plan: Plan) => Plan) => {
      const next = recipe(get().plan)
      if (next === get().plan) return
      show(next)
      clearTimeout(judgeTimer)
      judgeTimer = setTimeout(judge, judgeWaitMilliseconds)
      planWaits = true
      clearTimeout(planTimer)
      planTimer = setTimeout(() => void write(keepPlan), planWaitMilliseconds)
    }

    const draft = (field: string, text: string | null) => {
      if (text === (get().drafts[field] ?? null)) return
      set((page) => ({ drafts: withDraft(page.drafts, field, text) }))
      draftsWait = true
      clearTimeout(draftTimer)
      draftTimer = setTimeout(() => void write(keepDrafts), draftWaitMilliseconds)
    }

    const dropDrafts = (of: string) => {
      for (const field of Object.keys(get().drafts)) if (field.includes(of)) draft(field, null)
    }

    return {
      plan,
      kitchen,
      calmLevels: plan.levels,
      troubles: keeping.judge(plan, kitchen),
      drafts,
      unfinished: {},
      newRevision: null,
      notKept: null,
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
        change(undo.restore)
        for (const [field, text] of Object.entries(undo.texts)) draft(field, text)
      },
      dropUndo: () => set({ undo: null }),
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
      meet: (met) => {
        if (planWaits || met.at <= get().plan.at) return
        show(met)
        judge()
      },
      flush: async () => {
        judge()
        await write(keepPlan)
        await write(keepDrafts)
      },
    }
  })
}

function withDraft(drafts: Record<string, string>, field: string, text: string | null) {
  const next = { ...drafts }
  if (text === null) delete next[field]
  else next[field] = text
  return next
}
