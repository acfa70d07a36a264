import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { contentOf, notebookWithTrial } from './notebook-of.ts'

/** The trial as another device went on with it: a note more in the log. */
function goneOn(): WholeTrial {
  const whole = wholeTrialOf()
  const last = whole.events[0]
  if (!last) throw new Error('the fixture has a log')
  const { trialId, sessionId, at, zone } = last
  whole.events.push({
    ...{ trialId, sessionId, at, zone, id: 'note-there', device: 'device-2', count: 1 },
    ...{ kind: 'note', text: 'smells of apples', about: { kind: 'batch', id: 'batch-1' } },
  })
  return whole
}

const note = {
  ...{ trialId: 'trial-1', sessionId: 'session-1', kind: 'note' as const, text: 'here' },
  about: { kind: 'batch' as const, id: 'batch-1' },
}

describe('another copy of a trial that stands here', () => {
  test('N43: which is newer is told by their records, whatever the clocks say', async () => {
    const notebook = await notebookWithTrial()
    const early = goneOn()
    early.events = early.events.map((event) =>
      event.id === 'note-there' ? { ...event, at: 0 } : event,
    )
    expect(await notebook.importTrial(writeTrialFile(early))).toMatchObject({
      ...{ ok: false, reason: 'same-id-different-content' },
      compared: { newer: 'there', onlyThere: { events: 1, ballots: 0 }, different: [] },
    })
    await notebook.log(note)
    expect(await notebook.importTrial(writeTrialFile(early))).toMatchObject({
      compared: { newer: 'both', onlyThere: { events: 1 }, onlyHere: { events: 1 } },
    })
    const file = writeTrialFile(wholeTrialOf())
    expect(await notebook.importTrial(file)).toMatchObject({ compared: { newer: 'here' } })
  })

  test('N44: a record whose id stands for one of another trial here is refused, and that other is not touched', async () => {
    const notebook = await notebookWithTrial()
    await notebook.createTrial({ ...planOf(), id: 'plan-2', trialId: 'trial-2' })
    const about = { kind: 'trial' as const, id: 'trial-2' }
    const other = {
      trialId: 'trial-2',
      sessionId: null,
      kind: 'note' as const,
      text: 'mine',
      about,
    }
    const logged = await notebook.log(other)
    const before = await contentOf(notebook)
    const file = goneOn()
    file.events = file.events.map((event) =>
      event.id === 'note-there' ? { ...event, id: logged.id } : event,
    )
    await expect(notebook.takeInNew(writeTrialFile(file))).rejects.toMatchObject({
      reason: 'refused-record',
    })
    expect(await contentOf(notebook)).toEqual(before)
  })

  test('N44: what is new comes in by its id, what is here stays, and doing it again brings nothing', async () => {
    const notebook = await notebookWithTrial()
    const logged = await notebook.log(note)
    const file = writeTrialFile(goneOn())
    expect(await notebook.takeInNew(file)).toMatchObject({
      ...{ ok: true, taken: { events: 1, ballots: 0, sessions: 0 }, conflicts: [] },
    })
    const events = (await notebook.wholeTrial('trial-1'))?.events ?? []
    expect(events).toContainEqual(logged)
    expect(events.map(({ id }) => id)).toContain('note-there')
    expect(await notebook.takeInNew(file)).toMatchObject({ taken: { events: 0 } })
  })

  test('N44: a record of one id with two contents stays as it is here, and is named', async () => {
    const notebook = await notebookWithTrial()
    const there = goneOn()
    const [first] = there.ballots
    if (!first) throw new Error('the fixture has ballots')
    there.ballots = there.ballots.map((each) =>
      each.id === first.id ? { ...each, answers: [] } : each,
    )
    expect(await notebook.takeInNew(writeTrialFile(there))).toMatchObject({
      conflicts: [{ reason: 'changed-record', part: 'ballots', id: first.id }],
    })
    expect((await notebook.wholeTrial('trial-1'))?.ballots).toContainEqual(first)
  })

  test('N44: a taster who answered in both copies counts once', async () => {
    const notebook = await notebookWithTrial()
    const there = goneOn()
    const [first] = there.ballots
    if (!first) throw new Error('the fixture has ballots')
    there.ballots.push({ ...first, id: 'ballot-there', device: 'device-2', count: 2 })
    expect(await notebook.takeInNew(writeTrialFile(there))).toMatchObject({
      ...{ taken: { ballots: 0, events: 1 } },
      conflicts: [{ reason: 'ballot-twice', tasterId: first.tasterId }],
    })
  })

  test('N44: a ballot changed twice, voided and sealed anew in the other copy comes in whole, whatever the ids', async () => {
    const notebook = await notebookWithTrial()
    const there = goneOn()
    const [first] = there.ballots
    if (!first) throw new Error('the fixture has ballots')
    const later = (id: string, more: number, change: Partial<typeof first>) =>
      there.ballots.push({
        ...first,
        id,
        device: 'device-2',
        count: more,
        at: first.at + more,
        ...change,
      })
    const by = { by: 'AN', because: 'a slip of the thumb' }
    // Their ids rise the other way: in a file they stand by id.
    later('ballot-z', 1, { replaces: first.id, change: by })
    later('ballot-y', 2, { replaces: 'ballot-z', change: by })
    later('ballot-x', 3, { replaces: 'ballot-y', change: { ...by, voids: true } })
    later('ballot-a', 4, {})
    expect(await notebook.takeInNew(writeTrialFile(there))).toMatchObject({
      ...{ taken: { ballots: 4 }, conflicts: [] },
    })
  })

  test('N44: the plan is merged by field; what both changed stays and is named', async () => {
    const notebook = await notebookWithTrial()
    const plan = wholeTrialOf().plans[0]
    if (!plan) throw new Error('the fixture has a plan')
    await notebook.keepPlan({ ...plan, flights: 2 })
    const there = goneOn()
    const moved = { ...plan, id: 'plan-there', revision: 2, sparePieces: 3, flights: 4 }
    there.plans.push(moved)
    there.trial.planId = moved.id
    const outcome = await notebook.takeInNew(writeTrialFile(there))
    expect(outcome).toMatchObject({ conflicts: [{ reason: 'plan-field', field: 'flights' }] })
    const whole = await notebook.wholeTrial('trial-1')
    const inForce = whole?.plans.find(({ id }) => id === whole.trial.planId)
    expect(inForce).toMatchObject({ flights: 2, sparePieces: 3, revision: 3 })
    expect(whole?.plans).toHaveLength(4)
  })

  test('N44: a file in trouble changes nothing', async () => {
    const notebook = await notebookWithTrial()
    const before = await contentOf(notebook)
    expect(await notebook.takeInNew('{')).toMatchObject({ ok: false, reason: 'trouble' })
    expect(await contentOf(notebook)).toEqual(before)
  })
})
