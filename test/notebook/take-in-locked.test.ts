import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { notebookWithTrial } from './notebook-of.ts'

/** The trial as it left the laptop: a plan, and nothing begun. */
function planned(plan = planOf()): WholeTrial {
  const whole = wholeTrialOf()
  return { ...whole, plans: [plan], sessions: [], events: [], ballots: [], photos: [] }
}

/** A copy whose plan was written anew, whatever it had done. */
function rewritten(whole: WholeTrial, change: (plan: Plan) => Plan): WholeTrial {
  const plan = { ...change(planInForce(whole)), id: 'plan-there', revision: 2 }
  return { ...whole, plans: [...whole.plans, plan], trial: { ...whole.trial, planId: plan.id } }
}

const otherwise = (plan: Plan): Plan => ({
  ...plan,
  expectation: { direction: 'falls', bestGuess: 66.4 },
  plannedSessions: 5,
  responses: plan.responses.map((each) =>
    each.id === plan.mainResponseId
      ? { ...each, margin: 0.1, better: { is: 'neither' as const } }
      : each,
  ),
  sparePieces: 7,
})

async function inForce(notebook: OpenNotebook): Promise<Plan> {
  const whole = await notebook.wholeTrial('trial-1')
  if (!whole) throw new Error('the trial is here')
  return planInForce(whole)
}

const told = (notebook: OpenNotebook, whole: WholeTrial) =>
  notebook.takeInNew(writeTrialFile(whole))

const locked = (as: 'here' | 'there', ...parts: string[]) =>
  parts.map((part) => ({ reason: 'plan-locked', part, as }))

describe('another copy of a trial that is locked', () => {
  test('S7, N9: what another device wrote after the first mix here changes nothing that is locked', async () => {
    const notebook = await notebookWithTrial()
    const before = await inForce(notebook)
    const outcome = await told(notebook, rewritten(planned(), otherwise))
    expect(outcome).toMatchObject({
      ok: true,
      conflicts: locked('here', 'expectation', 'planned-sessions', 'better', 'margin'),
    })
    const now = await inForce(notebook)
    // What the lock leaves free comes in as ever.
    expect(now).toMatchObject({ sparePieces: 7, revision: 3 })
    expect({ ...now, id: '', revision: 0, at: 0, sparePieces: 0 }).toEqual({
      ...{ ...before, id: '', revision: 0, at: 0, sparePieces: 0 },
    })
    expect((await notebook.wholeTrial('trial-1'))?.plans.map(({ id }) => id)).toContain(
      'plan-there',
    )
    expect(await told(notebook, rewritten(planned(), otherwise))).toMatchObject({ conflicts: [] })
    expect(await inForce(notebook)).toEqual(now)
  })

  test('S7: a main response that was chosen stays, even where the other copy has thrown it out', async () => {
    const notebook = await notebookWithTrial()
    const before = await inForce(notebook)
    const [main, ...others] = before.responses
    const without = (plan: Plan) => ({
      ...plan,
      responses: others,
      mainResponseId: others[0]?.id ?? null,
    })
    expect(await told(notebook, rewritten(planned(), without))).toMatchObject({
      conflicts: locked('here', 'main-response'),
    })
    const now = await inForce(notebook)
    expect(now.mainResponseId).toBe(main?.id)
    expect(now.responses).toEqual(before.responses)
    expect(now.id).toBe(before.id)
  })

  test('S7: where the other copy was mixed first, what is locked there stands here too', async () => {
    const notebook = await notebookWithTrial(undefined, planned())
    await notebook.keepPlan(otherwise(planOf()), planOf())
    expect(await told(notebook, wholeTrialOf())).toMatchObject({
      conflicts: locked('there', 'expectation', 'planned-sessions', 'better', 'margin'),
    })
    const { expectation, plannedSessions, responses, sparePieces } = await inForce(notebook)
    const first = planOf()
    expect({ expectation, plannedSessions, responses }).toEqual({
      ...{ expectation: first.expectation, plannedSessions: first.plannedSessions },
      responses: first.responses,
    })
    expect(sparePieces).toBe(7)
    await expect(
      notebook.keepPlan({ ...(await inForce(notebook)), plannedSessions: 4 }),
    ).rejects.toMatchObject({ reason: 'locked' })
  })

  test('N9: a level that was hoped for and is gone in the other copy keeps the locked plan whole', async () => {
    const hoped = { hopedLevelId: 'level-2', mostSessions: null, looks: false, againstUsual: false }
    const plan: Plan = { ...planOf(), writtenFirst: hoped }
    const notebook = await notebookWithTrial(undefined, { ...wholeTrialOf(), plans: [plan] })
    const outcome = await told(
      notebook,
      rewritten(planned(plan), ({ writtenFirst: _, ...each }) => ({
        ...{ ...each, levels: each.levels.slice(0, 1), tellApart: null },
        atTable: { ...each.atTable, again: [] },
      })),
    )
    expect(outcome).toMatchObject({
      conflicts: [...locked('here', 'written-first'), { reason: 'plan-stands', as: 'here' }],
    })
    expect(await inForce(notebook)).toEqual(plan)
  })

  test('S7: before the first mix of either copy the other’s plan comes in whole', async () => {
    const notebook = await notebookWithTrial(undefined, planned())
    const outcome = await told(notebook, rewritten(planned(), otherwise))
    expect(outcome).toMatchObject({ conflicts: [] })
    expect(await inForce(notebook)).toMatchObject({ plannedSessions: 5 })
  })
})
