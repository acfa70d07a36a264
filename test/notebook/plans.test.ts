import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { contentOf, freshName, notebookOf, notebookWithTrial, testNow } from './notebook-of.ts'

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

  test('N6: a plan that nobody else can have is changed in place', async () => {
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

  test('N45: two windows that change different fields at once both keep theirs, whatever their clocks say', async () => {
    let now = testNow
    const name = freshName()
    const [one, other] = [notebookOf(name, () => now), notebookOf(name, () => now)]
    for (const thing of wholeTrialOf().kitchen) await one.keepKitchenThing(thing)
    const trialId = await one.createTrial(planOf())
    const base = (await one.wholeTrial(trialId))?.plans[0]
    if (!base) throw new Error('it has a plan')
    await one.keepPlan({ ...base, question: 'How soft?' }, base)
    now = testNow - 3_600_000
    const kept = await other.keepPlan({ ...base, flights: 3 }, base)
    expect(kept).toMatchObject({ conflicts: [], plan: { question: 'How soft?', flights: 3 } })
    expect((await one.wholeTrial(trialId))?.plans).toMatchObject([
      { question: 'How soft?', flights: 3 },
    ])
    const again = await one.keepPlan({ ...base, flights: 5 }, base)
    expect(again).toMatchObject({ conflicts: ['/flights'], plan: { flights: 5 } })
    expect(again.other).toMatchObject({ question: 'How soft?', flights: 3 })
  })

  test.each(['exported', 'backed up'])(
    'N46: a revision that was %s is never changed again',
    async (how) => {
      const { notebook, trialId } = await planning()
      const before = (await notebook.wholeTrial(trialId))?.plans ?? []
      if (how === 'exported') await notebook.exportTrial(trialId)
      else await notebook.backUp()
      const kept = await notebook.keepPlan({ ...planOf(), flights: 3 })
      expect(kept).toMatchObject({ newRevision: true, inUse: false, plan: { revision: 2 } })
      const plans = (await notebook.wholeTrial(trialId))?.plans ?? []
      expect(plans).toHaveLength(2)
      expect(plans).toEqual(expect.arrayContaining(before))
      await notebook.keepPlan({ ...kept.plan, flights: 4 })
      expect((await notebook.wholeTrial(trialId))?.plans).toHaveLength(2)
    },
  )

  test('N8: a plan that says nothing new changes nothing', async () => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    const kept = await notebook.keepPlan({ ...planOf(), at: testNow })
    expect(kept).toEqual({
      ...{
        plan: planOf(),
        newRevision: false,
        inUse: false,
        conflicts: [],
        other: null,
        trialRevision: 40,
      },
    })
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
