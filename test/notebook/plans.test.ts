import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { contentOf, notebookOf, notebookWithTrial, testNow } from './notebook-of.ts'

const refused = { reason: 'refused-record' }

/** A notebook with the kitchen of the tests and a new trial that nobody has worked yet. */
async function planning(): Promise<{ notebook: OpenNotebook; trialId: string }> {
  const notebook = notebookOf()
  for (const thing of wholeTrialOf().kitchen) await notebook.keepKitchenThing(thing)
  return { notebook, trialId: await notebook.createTrial(planOf(), { note: 'first' }) }
}

describe('plans', () => {
  test('N10: a new trial stands on its first plan and has its own seed', async () => {
    const { notebook, trialId } = await planning()
    const whole = await notebook.wholeTrial(trialId)
    expect(whole?.trial).toEqual({
      ...{ id: 'trial-1', createdAt: testNow, zone: 'Europe/Rome', planId: 'plan-1', seed: 7 },
      ...{ revision: 1, note: 'first' },
    })
    expect(wholeTrialShape.safeParse(whole).success).toBe(true)
    expect(whole?.kitchen).toEqual(wholeTrialOf().kitchen)
    await expect(notebook.createTrial(planOf())).rejects.toMatchObject(refused)
    await expect(notebook.createTrial({ ...planOf(), trialId: 'trial-2' })).rejects.toMatchObject(
      refused,
    )
    expect(await notebook.summaries()).toHaveLength(1)
  })

  test('N6: a plan that no session runs is changed in place', async () => {
    const { notebook, trialId } = await planning()
    const kept = await notebook.keepPlan({ ...planOf(), flights: 2, revision: 9 })
    expect(kept).toMatchObject({
      newRevision: false,
      plan: { id: 'plan-1', revision: 1, flights: 2, at: testNow },
    })
    expect((await notebook.wholeTrial(trialId))?.plans).toEqual([kept.plan])
  })

  test('N7: a plan in use stays as it is; the change is the next revision', async () => {
    const notebook = await notebookWithTrial()
    const { plan, newRevision } = await notebook.keepPlan({ ...planOf(), flights: 2 })
    expect(newRevision).toBe(true)
    expect(plan).toMatchObject({ revision: 2, flights: 2, at: testNow })
    const whole = await notebook.wholeTrial('trial-1')
    expect(whole?.trial.planId).toBe(plan.id)
    expect(whole?.plans.find((each) => each.id === 'plan-1')).toEqual(planOf())
    expect(whole?.plans).toHaveLength(2)
    const again = await notebook.keepPlan({ ...plan, flights: 3 })
    expect(again).toMatchObject({ newRevision: false, plan: { id: plan.id, revision: 2 } })
    const fromOld = await notebook.keepPlan({ ...planOf(), flights: 4 })
    expect(fromOld).toMatchObject({ newRevision: true, plan: { revision: 3, flights: 4 } })
    await expect(notebook.keepPlan({ ...planOf(), id: 'plan-9' })).rejects.toMatchObject(refused)
  })

  test('N8: a plan that says nothing new changes nothing', async () => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    const kept = await notebook.keepPlan({ ...planOf(), at: testNow })
    expect(kept).toEqual({ plan: planOf(), newRevision: false })
    expect(await contentOf(notebook)).toEqual(before)
  })

  test('N9: after the lock expectation, main response, margin and number of sessions stand', async () => {
    const notebook = await notebookWithTrial()
    const plan = planOf()
    const before = await contentOf(notebook)
    const other = { direction: 'falls' as const, bestGuess: 70 }
    await expect(notebook.keepPlan({ ...plan, expectation: other })).rejects.toMatchObject({
      reason: 'locked',
    })
    await expect(notebook.keepPlan({ ...plan, mainResponseId: 'chew' })).rejects.toMatchObject({
      reason: 'locked',
    })
    const wider = plan.responses.map((response) => ({ ...response, margin: 2.5 }))
    await expect(notebook.keepPlan({ ...plan, responses: wider })).rejects.toMatchObject({
      reason: 'locked',
    })
    const turned = plan.responses.map((response) => ({
      ...response,
      better: { is: 'lower' as const },
    }))
    await expect(notebook.keepPlan({ ...plan, responses: turned })).rejects.toMatchObject({
      reason: 'locked',
    })
    await expect(
      notebook.keepPlan({ ...plan, plannedSessions: plan.plannedSessions + 1 }),
    ).rejects.toMatchObject({ reason: 'locked' })
    const hoped = { hopedLevelId: plan.levels[0]?.id ?? null, mostSessions: null }
    const written = { ...hoped, looks: false, againstUsual: false }
    await expect(notebook.keepPlan({ ...plan, writtenFirst: written })).rejects.toMatchObject({
      reason: 'locked',
    })
    expect(await contentOf(notebook)).toEqual(before)
    const unlocked = await planning()
    const kept = await unlocked.notebook.keepPlan({ ...plan, expectation: other })
    expect(kept.plan.expectation).toEqual(other)
  })

  test('N11: a session runs the plan in force, takes the next number, and stays', async () => {
    const { notebook, trialId } = await planning()
    const session = wholeTrialOf().sessions[0]
    if (!session) throw new Error('the fixture has a session')
    await expect(notebook.beginSession({ ...session, number: 2 })).rejects.toMatchObject(refused)
    await expect(notebook.beginSession({ ...session, planId: 'plan-9' })).rejects.toMatchObject(
      refused,
    )
    await notebook.beginSession(session)
    expect((await notebook.wholeTrial(trialId))?.sessions).toEqual([session])
    await expect(notebook.beginSession({ ...session, number: 2 })).rejects.toMatchObject(refused)
    expect((await notebook.wholeTrial(trialId))?.sessions).toEqual([session])
  })
})
