import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { findingsAhead, workOutAhead } from '@/app/worker/findings-ahead.ts'
import { openWorker, startAhead } from '@/app/worker/open-worker.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

/** Workers whose program cannot be had: they take questions and answer none, and say so when they are made to fail. */
const made: DeadWorker[] = []

class DeadWorker extends EventTarget {
  ended = false
  constructor() {
    super()
    made.push(this)
  }
  postMessage() {}
  terminate() {
    this.ended = true
  }
  fail(kind: 'error' | 'messageerror' = 'error') {
    this.dispatchEvent(new Event(kind))
  }
}

beforeEach(() => {
  made.length = 0
  vi.stubGlobal('Worker', DeadWorker)
})
afterEach(() => vi.unstubAllGlobals())

const asked = () => ({ of: { whole: wholeTrialOf() }, weights: null })

test('what is asked of a worker whose program cannot be had, or whose answer cannot be read, is rejected and not waited for', async () => {
  for (const kind of ['error', 'messageerror'] as const) {
    const worker = openWorker('findings')
    const before = worker.service.findings(asked())
    made.at(-1)?.fail(kind)
    await expect(before).rejects.toThrow(/the program that works out the findings/)
    // What is asked of it afterwards too.
    await expect(worker.service.findings(asked())).rejects.toThrow(/works out the findings/)
    worker.end()
    expect(made.at(-1)?.ended).toBe(true)
  }
})

test('a worker that failed while it waited is handed to nobody', async () => {
  startAhead('plan')
  const [spare] = made
  spare?.fail()
  await vi.waitFor(() => expect(spare?.ended).toBe(true))
  openWorker('plan').end()
  expect(made).toHaveLength(2)
})

test('findings that were to be worked out ahead by a worker that failed are forgotten, so that whoever asks then asks another', async () => {
  const whole = wholeTrialOf()
  workOutAhead(whole)
  const coming = findingsAhead(whole)?.coming
  made.at(-1)?.fail()
  await expect(coming).rejects.toThrow()
  expect(findingsAhead(whole)).toBeNull()
  workOutAhead(whole)
  expect(made).toHaveLength(2)
  made.at(-1)?.fail()
  await vi.waitFor(() => expect(findingsAhead(whole)).toBeNull())
})

test('a worker that was ended is asked nothing more: a question to it throws, rather than wait for good', () => {
  const worker = openWorker('findings')
  worker.end()
  worker.end()
  expect(() => worker.service.findings(asked())).toThrow('asked of a worker that was ended')
})
