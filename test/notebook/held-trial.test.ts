import 'fake-indexeddb/auto'
import { expect, test, vi } from 'vitest'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import type { Notebook } from '@/notebook/notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { sessionOf } from '../trial-of/session-of.ts'
import { freshName, notebookOf, notebookWithTrial } from './notebook-of.ts'

const note: NewEvent = {
  ...{ trialId: 'trial-1', sessionId: 'session-1', kind: 'note' },
  text: 'smells of apples',
  about: { kind: 'batch', id: 'batch-1' },
}

async function read(notebook: Notebook, held?: WholeTrial): Promise<WholeTrial> {
  const whole = await notebook.wholeTrial('trial-1', held)
  if (!whole) throw new Error('the trial is here')
  return whole
}

test('N60: what a change leaves alone is the same object, and only what is new is checked', async () => {
  const notebook = await notebookWithTrial()
  const held = await read(notebook)
  expect(await read(notebook, held)).toBe(held)
  await notebook.log(note)
  const check = vi.spyOn(wholeTrialShape, 'safeParse')
  const now = await read(notebook, held)
  const looked = check.mock.calls.map(([whole]) => whole as WholeTrial)
  check.mockRestore()
  for (const part of ['plans', 'sessions', 'ballots', 'photos', 'kitchen'] as const) {
    expect(now[part]).toBe(held[part])
    expect(looked.reduce((sum, whole) => sum + whole[part].length, 0)).toBe(0)
  }
  expect(looked.flatMap(({ events }) => events).length).toBeLessThanOrEqual(1)
  const before = new Set(held.events)
  expect(now.events.filter((event) => !before.has(event))).toMatchObject([{ text: note.text }])
  expect(now).toEqual(await read(notebook))
})

test('N60: a kitchen thing that was changed is the only new one', async () => {
  const notebook = await notebookWithTrial()
  const held = await read(notebook)
  const [thing, ...others] = held.kitchen
  if (!thing || thing.kind === 'taster') throw new Error('the kitchen begins with a named thing')
  await notebook.keepKitchenThing({ ...thing, name: 'another name' })
  const now = await read(notebook, held)
  expect(now.events).toBe(held.events)
  expect(now.kitchen[0]).toMatchObject({ name: 'another name' })
  for (const [index, other] of others.entries()) expect(now.kitchen[index + 1]).toBe(other)
})

test('N60: what another tab wrote is seen, a plan that was changed and then put behind among it', async () => {
  const name = freshName()
  const here = notebookOf(name)
  const there = notebookOf(name)
  const { plan } = await (async () => {
    await notebookWithTrial(name)
    return { plan: planInForce(await read(here)) }
  })()
  // A revision that no session runs is changed in place; once one runs it, the next change is a revision of its own.
  const next = (await there.keepPlan({ ...plan, question: 'As it was first?' })).plan
  const held = await read(here)
  const changed = (await there.keepPlan({ ...next, question: 'As it was then?' })).plan
  expect(changed.id).toBe(next.id)
  const number = held.sessions.length + 1
  await there.beginSession(runOf(sessionOf(), { planId: changed.id, number }))
  await there.keepPlan({ ...changed, question: 'As it is now?' })
  const now = await read(here, held)
  expect(now).toEqual(await read(there))
  expect(now.plans.map(({ question }) => question)).toContain('As it was then?')
})

test('N60: a trial that was erased here is gone, whatever is held of it', async () => {
  const notebook = await notebookWithTrial()
  const held = await read(notebook)
  await notebook.bin('trial-1', true)
  await notebook.erase('trial-1')
  expect(await notebook.wholeTrial('trial-1', held)).toBeUndefined()
})

test('in development and tests a record that was read cannot be changed', async () => {
  const whole = await read(await notebookWithTrial())
  expect(() => whole.events.pop()).toThrow(TypeError)
  expect(() => whole.plans[0]?.levels.pop()).toThrow(TypeError)
})

/** A session of the same trial under ids and codes of its own. */
function runOf(session: ReturnType<typeof sessionOf>, change: { planId: string; number: number }) {
  return {
    ...session,
    ...change,
    id: 'session-next',
    batches: [],
    pieces: [],
    dealt: none(session),
  }
}

const none = ({ dealt }: ReturnType<typeof sessionOf>) => ({
  ...dealt,
  ...{
    flights: [],
    loads: [],
    doughOrder: [],
    servings: [],
    tasterOrders: [],
    sets: [],
    letters: [],
  },
})

test('N60: a press reads nothing of the log it adds to, nor does the reading after it', async () => {
  const notebook = await notebookWithTrial()
  const held = await read(notebook)
  const now = await read(notebook, held)
  const got = vi.spyOn(IDBIndex.prototype, 'getAllKeys')
  const all = vi.spyOn(IDBIndex.prototype, 'getAll')
  try {
    await notebook.logAll([note], new Set(now.events.map(({ id }) => id)))
    const after = await read(notebook, now)
    expect(after.events).toHaveLength(held.events.length + 1)
    const ids = after.events.map(({ id }) => id)
    expect(ids).toEqual(ids.toSorted())
    expect(after.trial.revision).toBe(held.trial.revision + 1)
    expect(got).not.toHaveBeenCalled()
    expect(all).not.toHaveBeenCalled()
  } finally {
    got.mockRestore()
    all.mockRestore()
  }
  expect(await read(notebook, held)).toEqual(await read(notebook))
})

test('N60: a trial erased and brought back in another tab is read anew, also under the same revision', async () => {
  const name = freshName()
  const here = await notebookWithTrial(name)
  const there = notebookOf(name)
  const held = await read(here, await read(here))
  await there.bin('trial-1', true)
  await there.erase('trial-1')
  const events = held.events.filter(({ kind }) => kind !== 'note')
  expect(events.length).toBeLessThan(held.events.length)
  await there.importTrial(writeTrialFile({ ...held, events }))
  const now = await read(here, held)
  expect(now.events).toHaveLength(events.length)
})
