import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import type { Event } from '@/core/session/event-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { contentOf, notebookOf, notebookWithTrial, trialAtTheTable } from './notebook-of.ts'

const trialId = 'trial-1'
const about = { kind: 'batch' as const, id: 'batch-1' }
const at = Date.UTC(2026, 4, 9, 11)
const noteOf = (id: string, change: Partial<Event> = {}): Event =>
  ({
    ...{ id, trialId, sessionId: 'session-1', device: 'device-9', count: 1, at, zone: 'UTC' },
    ...{ kind: 'note', text: 'smells of apples', about },
    ...change,
  }) as Event

describe('what comes from another device of an open table', () => {
  test('N65: an entry comes in by its id, the same again changes nothing', async () => {
    const notebook = await notebookWithTrial(undefined, trialAtTheTable())
    const entry = { event: noteOf('there-1') }
    expect(await notebook.takeEntry(trialId, entry, 0)).toEqual({ ok: true, already: false })
    const before = await contentOf(notebook)
    expect(await notebook.takeEntry(trialId, entry, 0)).toEqual({ ok: true, already: true })
    expect(await contentOf(notebook)).toEqual(before)
    const whole = await notebook.wholeTrial(trialId)
    expect(whole?.events.find(({ id }) => id === 'there-1')).toEqual(entry.event)
  })

  test('N65: what dangles, lasts, unseals, ends a tasting or bears this device’s name is refused and nothing is stored', async () => {
    const notebook = await notebookWithTrial(undefined, trialAtTheTable())
    const { device } = await notebook.settings()
    const lock = trialAtTheTable().events.find(({ kind }) => kind === 'lock')
    const before = await contentOf(notebook)
    const session = { kind: 'session' as const, id: 'session-1' }
    const refused: [Partial<Event>, string][] = [
      [{ about: { kind: 'batch', id: 'no-such' } }, 'does-not-fit'],
      [{ trialId: 'trial-2' }, 'does-not-fit'],
      [{ device }, 'does-not-fit'],
      [{ kind: 'void', corrects: lock?.id ?? '', text: undefined } as Partial<Event>, 'lasting'],
      [{ kind: 'unsealed', about: session } as Partial<Event>, 'bakers-own'],
      [{ kind: 'tasting-closed', reason: 'late', about: session } as Partial<Event>, 'bakers-own'],
    ]
    for (const [change, reason] of refused) {
      const event = noteOf('there-2', change)
      expect(await notebook.takeEntry(trialId, { event }, 0)).toEqual({ ok: false, reason })
    }
    expect(await contentOf(notebook)).toEqual(before)
  })

  test('N66: from a second of difference on it bears the baker’s time, with the difference beside it', async () => {
    const notebook = await notebookWithTrial(undefined, trialAtTheTable())
    await notebook.takeEntry(trialId, { event: noteOf('near') }, 999)
    await notebook.takeEntry(trialId, { event: noteOf('far') }, 90_000)
    const whole = await notebook.wholeTrial(trialId)
    const found = (id: string) => whole?.events.find((event) => event.id === id)
    expect(found('near')).toEqual(noteOf('near'))
    expect(found('far')).toEqual({ ...noteOf('far'), at: at + 90_000, clockLater: 90_000 })
  })

  test('N67: a copy comes in new, then again and again; what is here alone or waits stays as it is', async () => {
    const notebook = notebookOf()
    const copy: WholeTrial = trialAtTheTable()
    await notebook.takeCopy(copy, new Set())
    expect((await notebook.wholeTrial(trialId))?.events).toEqual(copy.events)
    const mine = await notebook.log({
      ...{ trialId, sessionId: 'session-1', kind: 'note', text: 'mine', about },
    })
    const before = await contentOf(notebook)
    await notebook.takeCopy(copy, new Set([mine.id]))
    expect(await contentOf(notebook)).toEqual(before)
    // The baker's clock tells another time of it; it stands here once the entry is in there.
    const told = { ...mine, at: mine.at + 5000, clockLater: 5000 }
    const later = { ...copy, events: [...copy.events, told] }
    await notebook.takeCopy(later, new Set([mine.id]))
    const now = async () =>
      (await notebook.wholeTrial(trialId))?.events.find(({ id }) => id === mine.id)
    expect(await now()).toEqual(mine)
    await notebook.takeCopy(later, new Set())
    expect(await now()).toEqual(told)
    await notebook.takeCopy(wholeTrialOf(), new Set())
    const whole = await notebook.wholeTrial(trialId)
    expect(whole?.ballots).toEqual(wholeTrialOf().ballots)
    expect(whole?.events.map(({ id }) => id)).toContain(mine.id)
  })

  test('N68: a plan changed on another device comes in as one revision under its own id, however often; what was changed here since stands', async () => {
    const notebook = await notebookWithTrial()
    const whole = await notebook.wholeTrial(trialId)
    if (!whole) throw new Error('a trial')
    const base = planInForce(whole)
    const now = async () => {
      const there = await notebook.wholeTrial(trialId)
      if (!there) throw new Error('a trial')
      return { plan: planInForce(there), revisions: there.plans.length }
    }
    const asked = { ...base, id: 'plan-there', question: 'Wetter?' }
    const took = await notebook.takePlan(trialId, { plan: asked, base, things: [] })
    expect(took).toEqual({ ok: true })
    const first = await now()
    expect(first).toMatchObject({
      ...{ plan: { ...asked, revision: base.revision + 1 }, revisions: whole.plans.length + 1 },
    })
    const flights = base.flights + 1
    await notebook.takePlan(trialId, {
      ...{ plan: { ...first.plan, flights }, base: first.plan, things: [] },
    })
    expect(await now()).toMatchObject({ plan: { id: 'plan-there', flights }, revisions: 2 })
    await notebook.keepPlan({ ...(await now()).plan, question: 'Mine?' })
    const late = { ...first.plan, flights, question: 'Late?', sparePieces: 3 }
    const clash = await notebook.takePlan(trialId, {
      ...{ plan: late, base: { ...first.plan, flights }, things: [] },
    })
    expect(clash).toEqual({ ok: false, reason: 'plan-moved' })
    expect((await now()).plan).toMatchObject({ question: 'Mine?', sparePieces: 3 })
    const before = await contentOf(notebook)
    const foreign = { plan: { ...late, trialId: 'trial-2' }, base, things: [] }
    expect(await notebook.takePlan(trialId, foreign)).toMatchObject({ reason: 'does-not-fit' })
    const gone = { ...late, tasters: [{ tasterId: 'nobody', knows: false }] }
    const dangling = await notebook.takePlan(trialId, { plan: gone, base: late, things: [] })
    expect(dangling).toMatchObject({ reason: 'does-not-fit' })
    expect(await contentOf(notebook)).toEqual(before)
  })

  test('N68: a copy takes no change of the plan away that was made here and not handed over', async () => {
    const notebook = notebookOf()
    const copy = wholeTrialOf()
    await notebook.takeCopy(copy, new Set())
    const base = planInForce(copy)
    expect(await notebook.planMadeHere(trialId)).toBeUndefined()
    const { plan: mine } = await notebook.keepPlan({ ...base, question: 'Mine?' }, base)
    expect(await notebook.planMadeHere(trialId)).toEqual(mine)
    expect(await notebook.takeCopy(copy, new Set(), base)).toEqual({ planWaits: mine.id })
    expect(await notebook.takeCopy(copy, new Set([mine.id]))).toEqual({ planWaits: mine.id })
    expect(await notebook.planMadeHere(trialId)).toEqual(mine)
    // Handed over, the copy tells what stands.
    await notebook.takeCopy(copy, new Set(), mine)
    const after = await notebook.wholeTrial(trialId)
    expect(after && planInForce(after)).toEqual(base)
    expect(await notebook.planMadeHere(trialId)).toBeUndefined()
  })
})
