import { describe, expect, it } from 'vitest'
import { designSection } from '@/core/report/design-section.ts'
import { weightsSection } from '@/core/report/weights-section.ts'
import { departures } from '@/core/session/departures.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { departureText } from '@/core/wording/bench/departure-text.ts'
import { reasonText } from '@/core/wording/findings/reason-text.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { madeLog } from '../session/made-events.ts'
import { madeSession, pieceAt } from '../session/made-session.ts'

const late = (change: Partial<Plan> = {}) =>
  madePlan({
    doughs: 'one',
    warmUpPiece: false,
    flights: 1,
    factor: {
      name: 'Last proof',
      unitOfMeasure: 'h',
      acts: { on: 'proof-time', stepId: 'proof' },
      splitsAt: 'divide',
      held: 'flour',
    },
    levels: [1, 2].map((value) => ({
      id: `lv-${value}`,
      value,
      label: `${value}`,
      control: value === 1,
    })),
    steps: [
      madeStep('mix', 'mix'),
      madeStep('Shape', 'ball', {
        per: 'piece',
        handsSeconds: 60,
        earlySeconds: 30,
        lateSeconds: 30,
      }),
      madeStep('proof', 'proof', { per: 'piece', handsSeconds: 0, waitSeconds: 3600 }),
      madeStep('bake', 'bake', { per: 'piece', waitSeconds: 1200 }),
    ],
    ...change,
  })

function shapedLate(plan: Plan) {
  const session = madeSession(plan)
  const { events, log } = madeLog()
  for (const [flight, { number }] of session.dealt.flights.entries())
    for (const { id } of plan.levels) {
      const about = { kind: 'piece', id: pieceAt(session, id, flight).id } as const
      const from = number * 1_000_000
      log({ kind: 'step-started', stepId: 'Shape', repeat: 1 }, { about, at: from })
      log({ kind: 'step-stopped', stepId: 'Shape', repeat: 1 }, { about, at: from + 300_000 })
    }
  const found = departures({ session, plan, events }).filter(({ what }) => what === 'wait')
  const letter = (id: string) =>
    session.dealt.letters.find(({ levelId }) => levelId === id)?.letter ?? ''
  return { session, found, letter }
}

describe('one dough that parts late', () => {
  it('names each piece that departed by its own line, and by its level where that may be seen', () => {
    const plan = late()
    const { session, found, letter } = shapedLate(plan)
    const said = found.map((one) => departureText(one, plan, session))
    expect(new Set(said)).toEqual(
      new Set(
        ['lv-1', 'lv-2'].map((id) => `${letter(id)}: Shape took 5 min, 4 min longer than planned.`),
      ),
    )
    const open = found.map((one) => departureText(one, plan, session, { levels: true }))
    expect(open).toContain(`${letter('lv-2')} (2 h): Shape took 5 min, 4 min longer than planned.`)
  })

  it('tells the pieces of several flights apart', () => {
    const plan = late({ flights: 2 })
    const { session, found } = shapedLate(plan)
    const said = found.map((one) => departureText(one, plan, session))
    expect(new Set(said).size).toBe(4)
    expect(said.join(' ')).toContain('(flight 2): Shape')
  })

  it('marks the step whose wait goes by level', () => {
    const whole = { ...wholeTrialOf(), plans: [{ ...late(), id: 'plan-1' }] }
    const section = designSection(whole)
    const table = section.blocks.find((block) => block.kind === 'table')
    const row = table?.kind === 'table' ? table.rows.find(([name]) => name === 'proof') : undefined
    expect(row?.[4]).toBe('by level: 1 h, 2 h')
    const text = JSON.stringify(section)
    expect(text).toContain('the formula is held: it is the same at every level')
    expect(text).not.toContain('change in mass')
  })

  it('does not say that a time moves an ingredient', () => {
    const said = JSON.stringify(weightsSection(late(), []))
    expect(said).not.toContain('moves its own ingredient')
    expect(said).not.toContain('at 1 h')
    expect(JSON.stringify(weightsSection(madePlan(), []))).toContain('moves its own ingredient')
  })

  it('does not say that each dough gave one piece', () => {
    expect(reasonText({ reason: 'one-flight', flights: 2 })).not.toContain('each dough')
  })
})

it('says in the report which step is done once for all doughs', () => {
  const whole = wholeTrialOf()
  const [plan] = whole.plans
  if (!plan) throw new Error('the trial has a plan')
  const [first, ...rest] = plan.steps
  const told = (steps: Plan['steps']) =>
    JSON.stringify(designSection({ ...whole, plans: [{ ...plan, steps }] }))
  expect(told(plan.steps)).not.toContain('all doughs at once')
  if (first) expect(told([{ ...first, once: true }, ...rest])).toContain('all doughs at once')
})
