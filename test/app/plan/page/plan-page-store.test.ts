import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { isUnkept, type PlanKeeping } from '@/app/plan/page/plan-page.ts'
import { createPlanPage } from '@/app/plan/page/plan-page-store.ts'
import { takeOutIngredient } from '@/core/plan-edits/take-out/take-out.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { clashText } from '@/core/wording/plan/clash-text.ts'
import type { KeptPlan } from '@/notebook/notebook.ts'
import { idOf, planOfTest } from '../../../core/plan-edits/plan-of-test.ts'

const asked = (question: string) => (plan: Plan) => ({ ...plan, question })

const keptAs = (plan: Plan): KeptPlan => ({
  ...{ plan, newRevision: false, inUse: false, conflicts: [], other: null, trialRevision: 5 },
})

function pageOf(keeping: Partial<PlanKeeping> = {}) {
  const kept: Plan[] = []
  const drafts: Record<string, string>[] = []
  const store = createPlanPage({ plan: planOfTest(), trialRevision: 5 }, {}, [], {
    keepPlan: async (plan) => {
      kept.push(plan)
      return keptAs(plan)
    },
    keepDrafts: async (values) => {
      drafts.push(values)
    },
    judge: () => [],
    refuses: () => null,
    ...keeping,
  })
  return { store, kept, drafts }
}

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

test('a change is kept once, at most 300 ms after the last key', async () => {
  const { store, kept } = pageOf()
  store.getState().change(asked('How'))
  await vi.advanceTimersByTimeAsync(100)
  store.getState().change(asked('How wet?'))
  expect(kept).toEqual([])
  await vi.advanceTimersByTimeAsync(300)
  expect(kept.map(({ question }) => question)).toEqual(['How wet?'])
})

test('rail and heads keep a level of which half is typed in its place until the typing rests', async () => {
  const { store } = pageOf()
  const levelsAt = (...values: number[]) =>
    store.getState().change((plan) => ({
      ...plan,
      levels: plan.levels.map((level, at) => ({ ...level, value: values[at] ?? level.value })),
    }))
  const shown = () => store.getState().calmLevels.map(({ value }) => value)
  levelsAt(64, 70, 76)
  expect(shown()).toEqual([64, 70, 76])
  levelsAt(64, 7, 76)
  expect(shown()).toEqual([64, 70, 76])
  levelsAt(64, 71, 76)
  expect(shown()).toEqual([64, 71, 76])
  levelsAt(64, 71, 7)
  await vi.advanceTimersByTimeAsync(900)
  expect(shown()).toEqual([64, 71, 76])
  await vi.advanceTimersByTimeAsync(200)
  expect(shown()).toEqual([64, 71, 7])
})

test('leaving the page writes plan and drafts at once', async () => {
  const { store, kept, drafts } = pageOf()
  store.getState().change(asked('How salty?'))
  store.getState().draft('level/1/value', '66,')
  await store.getState().flush()
  expect(kept).toHaveLength(1)
  expect(drafts).toEqual([{ 'level/1/value': '66,' }])
})

test('a plan in use goes on as the next revision, typing meanwhile is not lost and makes no second one', async () => {
  let answer: (value: KeptPlan) => void = () => {}
  const sent: Plan[] = []
  const { store } = pageOf({
    keepPlan: (plan) => {
      sent.push(plan)
      return sent.length === 1
        ? new Promise((resolve) => {
            answer = resolve
          })
        : Promise.resolve(keptAs(plan))
    },
  })
  store.getState().change(asked('One'))
  const first = store.getState().flush()
  await vi.advanceTimersByTimeAsync(0)
  store.getState().change(asked('Two'))
  await vi.advanceTimersByTimeAsync(400)
  expect(sent).toHaveLength(1)
  const [one] = sent
  if (!one) throw new Error('nothing was sent')
  answer({ ...keptAs({ ...one, id: 'plan-2', revision: 2 }), newRevision: true, inUse: true })
  await first
  await vi.advanceTimersByTimeAsync(400)
  expect(sent.map(({ id, question }) => [id, question])).toEqual([
    [one.id, 'One'],
    ['plan-2', 'Two'],
  ])
  expect(store.getState().newRevision).toBe(2)
  expect(store.getState().plan.question).toBe('Two')
})

test('a failed write says so, keeps what was typed and is tried again', async () => {
  const disk: { full: boolean } = { full: true }
  const { store } = pageOf({
    keepPlan: async (plan) => {
      if (disk.full) throw new Error('out of room')
      return keptAs(plan)
    },
  })
  store.getState().change(asked('Kept here'))
  await store.getState().flush()
  expect(store.getState().notKept).toMatchObject({ detail: 'out of room', rolledBack: false })
  expect(store.getState().waiting).toBe(true)
  expect(store.getState().plan.question).toBe('Kept here')
  disk.full = false
  await store.getState().flush()
  expect(store.getState()).toMatchObject({ notKept: null, waiting: false })
})

test('undo puts an ingredient back beside what was changed in the meantime, and its drafts are gone', () => {
  const { store } = pageOf()
  const salt = idOf(store.getState().plan, 'Salt')
  store.getState().draft(`ingredient/${salt}/percent`, '2,x')
  const taken = takeOutIngredient(store.getState().plan, salt)
  if (!taken) throw new Error('salt could not be taken out')
  store.getState().takeOut(taken)
  expect(store.getState().drafts).toEqual({})
  expect(store.getState().undo?.said).toBe('Removed: Salt')
  store.getState().change(asked('Later'))
  store.getState().takeBack()
  const { plan } = store.getState()
  expect(plan.question).toBe('Later')
  expect(plan.formula).toEqual(planOfTest().formula)
  expect(store.getState().undo).toBeNull()
})

test('what another window changed is merged by field, told newer by the trial’s revision and by no clock', async () => {
  const { store, kept } = pageOf()
  const before = planOfTest()
  store.getState().meetKept({ ...before, question: 'Stale' }, 5)
  expect(store.getState().plan.question).toBe(before.question)
  // Written by a clock that was set back: newer all the same.
  store.getState().change((plan) => ({ ...plan, flights: 4 }))
  store.getState().meetKept({ ...before, at: 1, question: 'Elsewhere' }, 6)
  expect(store.getState().plan).toMatchObject({ question: 'Elsewhere', flights: 4 })
  await store.getState().flush()
  expect(kept).toMatchObject([{ question: 'Elsewhere', flights: 4 }])
})

test('a change that the lock refuses goes from the page at once, and is said', async () => {
  const { store } = pageOf({
    keepPlan: async () => {
      throw Object.assign(new Error('locked'), { reason: 'locked' })
    },
  })
  store.getState().change(asked('After the lock'))
  await store.getState().flush()
  expect(store.getState().plan.question).toBe(planOfTest().question)
  expect(store.getState().notKept).toMatchObject({ reason: 'locked', rolledBack: true })
  // It went from the page again: nothing waits, and a session may begin.
  expect(isUnkept(store.getState().notKept)).toBe(false)
  expect(store.getState().waiting).toBe(false)
})

test('a plan is judged when the typing pauses, and at once before the page is left', async () => {
  const troubled = { path: '/question', severity: 'stop' as const, text: 'Ask something.' }
  const { store } = pageOf({ judge: ({ question }) => (question === '' ? [troubled] : []) })
  const { change, flush } = store.getState()
  change(asked(''))
  expect(store.getState().troubles).toEqual([])
  change(asked('How'))
  await vi.advanceTimersByTimeAsync(200)
  expect(store.getState().troubles).toEqual([])
  change(asked(''))
  await vi.advanceTimersByTimeAsync(500)
  expect(store.getState().troubles).toEqual([troubled])
  change(asked('How wet?'))
  await flush()
  expect(store.getState().troubles).toEqual([])
})

test('a change that the lock forbids is not made, and is said; the next one that may be made takes the words away', async () => {
  const refuses = (before: Plan, next: Plan) =>
    before.plannedSessions === next.plannedSessions ? null : 'Sessions are fixed.'
  const { store, kept } = pageOf({ refuses })
  const before = store.getState().plan
  store.getState().changeSaid('Done', (plan) => ({ ...plan, plannedSessions: 9 }))
  expect(store.getState().plan).toBe(before)
  expect(store.getState().refused).toBe('Sessions are fixed.')
  expect(store.getState().undo).toBeNull()
  store.getState().change(asked('How wet?'))
  expect(store.getState().refused).toBeNull()
  await vi.advanceTimersByTimeAsync(300)
  expect(kept.map(({ question, plannedSessions }) => [question, plannedSessions])).toEqual([
    ['How wet?', before.plannedSessions],
  ])
})

test('N45: a field that another window changed at once is told with both words, and the other one can be taken', async () => {
  const { store, kept } = pageOf()
  const before = planOfTest()
  store.getState().change((plan) => ({ ...plan, question: 'Here', flights: 4 }))
  store.getState().meetKept({ ...before, question: 'Elsewhere', plannedSessions: 3 }, 6)
  const { plan, clash } = store.getState()
  expect(plan).toMatchObject({ question: 'Here', flights: 4, plannedSessions: 3 })
  if (!clash) throw new Error('the clash is not told')
  expect(clash.paths).toEqual(['/question'])
  expect(clashText(clash.paths, clash.here, clash.other)).toBe(
    'Another window changed the question at the same time. “Here” stands; the other window wrote “Elsewhere”.',
  )
  store.getState().takeOther()
  await store.getState().flush()
  expect(kept.at(-1)).toMatchObject({ question: 'Elsewhere', flights: 4, plannedSessions: 3 })
  expect(store.getState().clash).toBeNull()
})

test('a page takes its own write, seen before it is told as kept, for no other window’s', async () => {
  const { store } = pageOf({
    keepPlan: async (plan) => {
      store.getState().meetKept(plan, 6)
      store.getState().change(asked('Typed on'))
      return { ...keptAs(plan), trialRevision: 6 }
    },
  })
  store.getState().change(asked('Typed'))
  await store.getState().flush()
  expect(store.getState()).toMatchObject({ clash: null, plan: { question: 'Typed on' } })
})
