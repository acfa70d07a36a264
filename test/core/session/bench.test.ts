import { describe, expect, it } from 'vitest'
import { agenda } from '@/core/session/agenda.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { failuresOf, notServed } from '@/core/session/failures.ts'
import { measureValues } from '@/core/session/measure-values.ts'
import { pieceMeasures } from '@/core/session/piece-measures.ts'
import { minutesSinceOven } from '@/core/session/serving-age.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { temperaturesOf } from '@/core/session/temperatures.ts'
import { madePlan } from '../made-plan.ts'
import { madeLog } from './made-events.ts'
import { madeSession, nth, pieceAt } from './made-session.ts'

const plan = madePlan()
const session = madeSession(plan)
const [first = '', second = '', third = ''] = session.dealt.doughOrder
const batch = (id: string) => ({ kind: 'batch', id }) as const
const piece = (id: string) => ({ kind: 'piece', id }) as const
const minutes = (count: number) => 1_000_000 + count * 60_000

describe('agenda', () => {
  it('begins with the first dough in dough order, nothing due', () => {
    const items = agenda(session, plan, [], minutes(0))
    expect(items.map((item) => item.batchId)).toEqual(session.dealt.doughOrder)
    expect(items[0]).toMatchObject({ do: 'start', step: { id: 'mix' }, repeat: 1, dueAt: null })
  })

  it('puts the running step first by its due moment, and the next dough one stagger later', () => {
    const { events, log } = madeLog()
    log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, { about: batch(first), at: minutes(0) })
    const items = agenda(session, plan, effectiveEvents(events), minutes(10))
    // Mix takes 480 s of hands: due to end at minute 8, two minutes ago; the second dough is due one stagger of 480 s
    // after the first began, at the same moment; the first dough comes first.
    expect(items[0]).toMatchObject({
      unit: { kind: 'batch', id: first },
      do: 'end',
      dueAt: minutes(8),
      latestAt: minutes(10),
      lateSeconds: 120,
    })
    expect(items[1]).toMatchObject({ unit: { id: second }, do: 'start', dueAt: minutes(8) })
    // The third follows the second, which was not begun at minute 8 and so begins now at the soonest.
    expect(items[2]).toMatchObject({ unit: { id: third }, dueAt: minutes(18), lateSeconds: -480 })
  })

  it('goes on with the next repeat, passes over what was skipped, and ends what nobody stopped', () => {
    const { events, log } = madeLog()
    log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, { about: batch(first), at: minutes(0) })
    log(
      { kind: 'step-started', stepId: 'fold', repeat: 1 },
      { about: batch(first), at: minutes(40) },
    )
    log(
      { kind: 'step-stopped', stepId: 'fold', repeat: 1 },
      { about: batch(first), at: minutes(62) },
    )
    const effective = effectiveEvents(events)
    expect(agenda(session, plan, effective, minutes(62))[0]).toMatchObject({ unit: { id: second } })
    const own = agenda(session, plan, effective, minutes(62)).find((item) => item.batchId === first)
    expect(own).toMatchObject({ do: 'start', step: { id: 'fold' }, repeat: 2, dueAt: minutes(62) })
    const mix = stepRuns(session, plan, effective).find((run) => run.batchId === first)
    expect(mix).toMatchObject({ startedAt: minutes(0), stoppedAt: minutes(40) })
  })

  it('sends pieces to the oven by load, leaves out the lost, and is empty when all is through', () => {
    const { events, log } = madeLog()
    for (const [index, { id }] of session.pieces.entries()) {
      const about = piece(id)
      log({ kind: 'step-started', stepId: 'ball', repeat: 1 }, { about, at: minutes(100 - index) })
      log({ kind: 'step-stopped', stepId: 'ball', repeat: 1 }, { about, at: minutes(101 - index) })
    }
    const loaded = session.dealt.loads.flatMap((load) => load.pieceIds)
    const items = agenda(session, plan, effectiveEvents(events), minutes(101))
    expect(items.map((item) => item.unit.id)).toEqual(loaded)
    const lost = nth(loaded, 3)
    log({ kind: 'failure', what: 'not-served' }, { about: piece(lost) })
    const without = agenda(session, plan, effectiveEvents(events), minutes(101))
    expect(without.map((item) => item.unit.id)).toEqual(loaded.filter((id) => id !== lost))
    for (const id of loaded) {
      log({ kind: 'bake-in' }, { about: piece(id) })
      log({ kind: 'bake-out' }, { about: piece(id) })
    }
    expect(agenda(session, plan, effectiveEvents(events), minutes(101))).toEqual([])
  })

  it('works the pieces of one dough apart from where the factor acts', () => {
    const late = madePlan({
      doughs: 'one',
      factor: {
        name: 'last proof',
        unitOfMeasure: 'min',
        acts: { on: 'proof-time', stepId: 'proof' },
        splitsAt: 'proof',
        held: 'piece',
      },
      levels: [20, 45].map((value) => ({
        id: `lv-${value}`,
        value,
        label: `${value}`,
        control: false,
      })),
      steps: [
        ...plan.steps.slice(0, 4),
        { ...nth(plan.steps, 1), id: 'proof', kind: 'proof', waitSeconds: 1 },
        nth(plan.steps, 4),
      ],
    })
    const made = madeSession(late)
    const runs = stepRuns(made, late, [])
    const proofs = runs.filter((run) => run.step.id === 'proof')
    expect(proofs.every((run) => run.unit.kind === 'piece')).toBe(true)
    // 20 and 45 minutes, read in the factor's own unit.
    expect(new Set(proofs.map((run) => `${run.levelId} ${run.step.waitSeconds}`))).toEqual(
      new Set(['lv-20 1200', 'lv-45 2700']),
    )
    expect(runs.filter((run) => run.step.id === 'mix')).toHaveLength(1)
  })
})

describe('piece measures', () => {
  const one = pieceAt(session, 'lv-mid')
  const about = piece(one.id)
  const measuresOf = (events: Parameters<typeof effectiveEvents>[0]) =>
    pieceMeasures(session, plan, effectiveEvents(events)).find((own) => own.pieceId === one.id)

  it('works out loss with its age, spring, volume, bake time and age by hand', () => {
    const { events, log } = madeLog()
    log(
      { kind: 'step-started', stepId: 'mix', repeat: 1 },
      { about: batch(one.batchId), at: minutes(0) },
    )
    log({ kind: 'mass', when: 'in', grams: 250 }, { about, at: minutes(119) })
    log({ kind: 'size', what: 'height-in', value: 20 }, { about, at: minutes(119) })
    log({ kind: 'bake-in' }, { about, at: minutes(120) })
    log({ kind: 'bake-out' }, { about, at: minutes(124) })
    log({ kind: 'temperature', of: 'core', celsius: 94.5 }, { about, at: minutes(124) })
    log({ kind: 'size', what: 'height-out', value: 33 }, { about, at: minutes(125) })
    log({ kind: 'mass', when: 'out', grams: 226 }, { about, at: minutes(125) })
    log({ kind: 'mass', when: 'cooled', grams: 220 }, { about, at: minutes(154) })
    log({ kind: 'size', what: 'volume', value: 770 }, { about, at: minutes(154) })
    // Loss (250 − 220)/250 = 12 % at 30 minutes; spring (33 − 20)/20 = 65 %; 770/220 = 3.5 mL/g; 240 s; 120 minutes old.
    const own = measuresOf(events)
    expect(own?.bakeLoss?.percent).toBeCloseTo(12, 10)
    expect(own?.bakeLoss).toMatchObject({ ageSeconds: 1800, topped: false })
    expect(own?.ovenSpringPercent).toBeCloseTo(65, 10)
    expect(own?.specificVolume).toBeCloseTo(3.5, 10)
    expect(own).toMatchObject({ bakeSeconds: 240, ageAtBakingSeconds: 7200, coreCelsius: 94.5 })
    expect(minutesSinceOven(effectiveEvents(events), one.id, minutes(131))).toBe(7)
    expect(minutesSinceOven(effectiveEvents(events), one.id, minutes(120))).toBeNull()
  })

  it('gives no loss between a plain and a topped weight, none without both, none from nothing', () => {
    const { events, log } = madeLog()
    expect(measuresOf(events)?.bakeLoss).toBeNull()
    log({ kind: 'mass', when: 'in', grams: 250 }, { about })
    expect(measuresOf(events)?.bakeLoss).toBeNull()
    log({ kind: 'mass', when: 'out', grams: 300, topped: true }, { about })
    expect(measuresOf(events)?.bakeLoss).toBeNull()
    log({ kind: 'mass', when: 'in', grams: 0, corrects: 'e-1' }, { about })
    log({ kind: 'mass', when: 'out', grams: 0, corrects: 'e-2' }, { about })
    expect(measuresOf(events)?.bakeLoss).toBeNull()
  })

  it('lets a typed value stand before a worked-out one, for counted pieces alone', () => {
    const { events, log } = madeLog()
    const loss = nth(plan.responses, 3)
    const warmUp = session.pieces.find((own) => own.role === 'warm-up')
    for (const id of [one.id, pieceAt(session, 'lv-low').id, warmUp?.id ?? '']) {
      log({ kind: 'mass', when: 'in', grams: 200 }, { about: piece(id) })
      log({ kind: 'mass', when: 'cooled', grams: 180 }, { about: piece(id) })
    }
    log({ kind: 'measured', responseId: 'loss', value: 9 }, { about })
    log({ kind: 'measured', responseId: 'loss', value: 11 }, { about })
    const values = measureValues(session, plan, effectiveEvents(events), loss)
    expect(values.map(({ unit, value }) => [unit.id, value])).toEqual([
      [one.id, 11],
      [pieceAt(session, 'lv-low').id, 10],
    ])
    expect(measureValues(session, plan, effectiveEvents(events), nth(plan.responses, 0))).toEqual(
      [],
    )
  })
})

describe('failures and temperatures', () => {
  it('concerns a piece, all pieces of a dough, or the piece of a serving', () => {
    const { events, log } = madeLog()
    log({ kind: 'failure', what: 'torn' }, { about: batch(first) })
    const serving = nth(session.dealt.servings, 0)
    log(
      { kind: 'failure', what: 'not-served', note: 'fell' },
      { about: { kind: 'serving', id: serving.id } },
    )
    const found = failuresOf(session, effectiveEvents(events))
    const ofDough = session.pieces.filter((own) => own.batchId === first).map((own) => own.id)
    expect(found[0]?.pieceIds).toEqual(ofDough)
    expect(found[1]).toMatchObject({
      pieceIds: [serving.pieceId],
      note: 'fell',
      what: 'not-served',
    })
    expect([...notServed(session, effectiveEvents(events))]).toEqual([serving.pieceId])
  })

  it('reads temperatures by kind and dough', () => {
    const { events, log } = madeLog()
    log({ kind: 'temperature', of: 'dough', celsius: 24.5 }, { about: batch(first) })
    log({ kind: 'temperature', of: 'room', celsius: 21 })
    log({ kind: 'temperature', of: 'dough', celsius: 25.5 }, { about: batch(second) })
    const effective = effectiveEvents(events)
    expect(temperaturesOf(effective)).toHaveLength(3)
    expect(temperaturesOf(effective, 'dough', second).map((one) => one.celsius)).toEqual([25.5])
  })
})
