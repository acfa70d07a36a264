import { createStore, type StoreApi } from 'zustand'
import { stretchedAxis } from '@/core/figure/stretched-axis.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { namingWhatStands } from '@/core/plan-edits/parts/what-stands.ts'
import { putBackParts } from '@/core/plan-edits/take-out/put-back-parts.ts'
import { mergePlans } from '@/core/trial/merge-plans.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { afterKey, doWaiting } from './after-key.ts'
import { partOf } from './part-names.ts'
import { createPlanKeeper } from './plan-keeper.ts'
import type { PlanKeeping, PlanPage } from './plan-page.ts'

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
      judgeTimer = undefined
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
      opened: [...new Set(Object.keys(drafts).flatMap((field) => partOf(field) ?? []))],
      unfinished: {},
      newRevision: null,
      notKept: null,
      clash: null,
      waiting: false,
      refused: null,
      undo: null,
      jump: null,
      change,
      afterKey: (work) => {
        const done = keeper.keyTyped()
        afterKey(() => {
          try {
            work()
          } finally {
            done()
          }
        })
      },
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
      jumpTo: (to) => {
        const part = partOf(to)
        set(({ opened }) => ({
          jump: { to },
          opened: part === null || opened.includes(part) ? opened : [...opened, part],
        }))
      },
      turn: (part, open) =>
        set(({ opened }) => ({
          opened: [...opened.filter((each) => each !== part), ...(open ? [part] : [])],
        })),
      meetKitchen: (met) => {
        // The notebook reads it anew at every keeping: an equal one must not set everything computing again.
        if (JSON.stringify(met) === JSON.stringify(get().kitchen)) return
        set({ kitchen: met })
        judge()
      },
      meetKept: keeper.meetKept,
      flush: async () => {
        doWaiting()
        if (judgeTimer !== undefined) judge()
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
