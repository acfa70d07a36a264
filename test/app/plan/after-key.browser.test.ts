import { expect, test } from 'vitest'
import { afterKey } from '@/app/plan/page/after-key.ts'
import { createPlanPage } from '@/app/plan/page/plan-page-store.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planOfTest } from '../../core/plan-edits/plan-of-test.ts'

/** What was done so far, by the words each work says. */
function saying() {
  const done: string[] = []
  return { done, later: (word: string) => afterKey(() => done.push(word)) }
}

const frame = () => new Promise(requestAnimationFrame)

test('what follows from a key waits for the frame with the key, and no longer', async () => {
  const { done, later } = saying()
  later('plan')
  expect(done).toEqual([])
  await frame()
  expect(done).toEqual([])
  await expect.poll(() => done, { interval: 5 }).toEqual(['plan'])
  await frame()
  expect(done).toEqual(['plan'])
})

test.each(['keydown', 'beforeinput', 'pointerdown', 'click', 'focusout'])(
  'it is done before what a %s sets going, in the order of the keys',
  (kind) => {
    const { done, later } = saying()
    later('first')
    later('second')
    document.body.addEventListener(kind, () => done.push('press'), { once: true })
    document.body.dispatchEvent(new Event(kind, { bubbles: true }))
    expect(done).toEqual(['first', 'second', 'press'])
  },
)

test.each(['pagehide', 'hashchange', 'popstate'])(
  'it is done before the page is left by a %s',
  (kind) => {
    const { done, later } = saying()
    later('plan')
    window.addEventListener(kind, () => done.push('left'), { once: true })
    window.dispatchEvent(new Event(kind))
    expect(done).toEqual(['plan', 'left'])
  },
)

test('what waits anew after it was done early is done in its turn', async () => {
  const { done, later } = saying()
  later('one')
  document.body.dispatchEvent(new Event('keydown', { bubbles: true }))
  later('two')
  expect(done).toEqual(['one'])
  await expect.poll(() => done, { interval: 5 }).toEqual(['one', 'two'])
})

/** An open plan page whose notebook keeps at once, and the questions it was asked to keep. */
function pageThatKeeps() {
  const kept: string[] = []
  const keepPlan = async (plan: Plan) => {
    kept.push(plan.question)
    return { plan, newRevision: false, inUse: false, conflicts: [], other: null, trialRevision: 6 }
  }
  const keeping = { keepPlan, keepDrafts: async () => {}, judge: () => [], refuses: () => null }
  const store = createPlanPage({ plan: planOfTest(), trialRevision: 5 }, {}, [], keeping)
  return { store, kept }
}

test('from the key on nothing counts as kept, until what follows from it is', async () => {
  const { store, kept } = pageThatKeeps()
  expect(store.getState().waiting).toBe(false)
  store
    .getState()
    .afterKey(() => store.getState().change((plan) => ({ ...plan, question: 'How wet?' })))
  expect(store.getState().waiting).toBe(true)
  await expect.poll(() => store.getState().waiting).toBe(false)
  expect(kept).toEqual(['How wet?'])
})

test('a key that changes nothing leaves all as kept', async () => {
  const { store, kept } = pageThatKeeps()
  store.getState().afterKey(() => store.getState().change((plan) => plan))
  await expect.poll(() => store.getState().waiting).toBe(false)
  expect(kept).toEqual([])
})

test('a page that is left in the frame of the key keeps what follows from it', async () => {
  const { store, kept } = pageThatKeeps()
  store
    .getState()
    .afterKey(() => store.getState().change((plan) => ({ ...plan, question: 'How wet?' })))
  await store.getState().flush()
  expect(kept).toEqual(['How wet?'])
})
