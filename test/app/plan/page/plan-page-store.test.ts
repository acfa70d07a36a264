import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { createPlanPage, type PlanKeeping } from '@/app/plan/page/plan-page-store.ts'
import { takeOutIngredient } from '@/core/plan-edits/take-out/take-out.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { idOf, planOfTest } from '../../../core/plan-edits/plan-of-test.ts'

const asked = (question: string) => (plan: Plan) => ({ ...plan, question })

function pageOf(keeping: Partial<PlanKeeping> = {}) {
  const kept: Plan[] = []
  const drafts: Record<string, string>[] = []
  const store = createPlanPage(planOfTest(), {}, [], {
    now: () => 1_700_000_100_000,
    keepPlan: async (plan) => {
      kept.push(plan)
      return { plan, newRevision: false }
    },
    keepDrafts: async (values) => {
      drafts.push(values)
    },
    judge: () => [],
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
  let answer: (value: { plan: Plan; newRevision: boolean }) => void = () => {}
  const sent: Plan[] = []
  const { store } = pageOf({
    keepPlan: (plan) => {
      sent.push(plan)
      return sent.length === 1
        ? new Promise((resolve) => {
            answer = resolve
          })
        : Promise.resolve({ plan, newRevision: false })
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
  answer({ plan: { ...one, id: 'plan-2', revision: 2 }, newRevision: true })
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
      return { plan, newRevision: false }
    },
  })
  store.getState().change(asked('Kept here'))
  await store.getState().flush()
  expect(store.getState().notKept).toBe('out of room')
  expect(store.getState().plan.question).toBe('Kept here')
  disk.full = false
  await store.getState().flush()
  expect(store.getState().notKept).toBeNull()
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

test('a plan changed elsewhere is taken over when newer, and never over unkept typing', () => {
  const { store } = pageOf()
  const newer = { ...planOfTest(), at: 1_700_000_050_000, question: 'Elsewhere' }
  store.getState().meet({ ...newer, at: 1 })
  expect(store.getState().plan.question).toBe(planOfTest().question)
  store.getState().meet(newer)
  expect(store.getState().plan.question).toBe('Elsewhere')
  store.getState().change(asked('Here'))
  store.getState().meet({ ...newer, at: 1_700_000_090_000 })
  expect(store.getState().plan.question).toBe('Here')
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
