import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { agenda } from '@/core/session/agenda.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { stageOf } from '@/core/whole-trial/stage.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import type { Sample } from '../../trials/sample.ts'
import { wholeSample } from '../../trials/sample.ts'
import { samples } from '../../trials/samples.ts'

const hour = 3_600_000

function made(name: string): WholeTrial {
  return wholeSample(samples.find((sample) => sample.name === name) as Sample)
}

function planOf({ plans: [plan] }: WholeTrial) {
  if (!plan) throw new Error('a sample has a plan')
  return plan
}

const levelsOf = (whole: WholeTrial) => planOf(whole).levels.map(({ value }) => value)
const controlsOf = (whole: WholeTrial) =>
  planOf(whole).levels.flatMap(({ value, control }) => (control ? [value] : []))

function foundIn(whole: WholeTrial) {
  const found = trialFindings(whole, { unsealed: false, resamples: null })
  if (!found.ok) throw new Error('the sample is unsealed')
  const [main] = found.document.responses
  if (!main) throw new Error('the sample has a main response')
  return { ...found, main }
}

describe.each(samples.map(({ name }) => [name]))('%s', (name) => {
  const whole = made(name)

  test('made anew it is the file in trials/, byte for byte', () => {
    const sample = samples.find((each) => each.name === name) as Sample
    expect(writeTrialFile(wholeSample(sample))).toBe(readFileSync(`trials/${name}.json`, 'utf8'))
  })

  test('says that its data are invented, and knows tasters by two letters alone', () => {
    expect(whole.trial.note).toMatch(/^Invented data/)
    const initials = whole.kitchen.flatMap((thing) =>
      thing.kind === 'taster' ? thing.initials : [],
    )
    expect(initials).toHaveLength(planOf(whole).tasters.length)
    for (const each of initials) expect(each).toMatch(/^[A-Z]{2}$/)
  })

  test('its log runs with the clock, and the plan is locked before the first dough is begun', () => {
    const log = whole.events.toSorted((one, other) => one.count - other.count)
    for (const session of whole.sessions) {
      const stamps = log.filter(({ sessionId }) => sessionId === session.id).map(({ at }) => at)
      expect(stamps).toEqual(stamps.toSorted((one, other) => one - other))
      expect(stamps[0]).toBeGreaterThan(session.createdAt)
    }
    const kinds = log.map(({ kind }) => kind)
    expect(kinds.indexOf('lock')).toBeLessThan(kinds.indexOf('step-started'))
  })

  test('weights stay within two steps of the scale, losses in the oven between 8 and 15 %', () => {
    const masses = new Map<string, number>()
    let losses = 0
    for (const event of whole.events) {
      if (event.kind !== 'mass') continue
      if (event.when === 'in') masses.set(event.about.id, event.grams)
      else {
        const before = masses.get(event.about.id) ?? 0
        const loss = (1 - event.grams / before) * 100
        expect(loss).toBeGreaterThan(8)
        expect(loss).toBeLessThan(15)
        losses += 1
      }
    }
    const pieces = whole.sessions.flatMap((session) => session.pieces)
    expect(losses).toBe(stageOf(whole) === 'working' ? 0 : pieces.length)
  })

  test('no more pieces are in the oven than it has places', () => {
    let inside = 0
    for (const { kind } of whole.events.toSorted((one, other) => one.at - other.at)) {
      if (kind === 'bake-in') inside += 1
      if (kind === 'bake-out') inside -= 1
      expect(inside).toBeLessThanOrEqual(planOf(whole).placesPerLoad ?? 1)
    }
  })
})

test('the focaccia: five levels, three sessions, eight tasters, rested; liking is best inside the range', () => {
  const whole = made('focaccia-hydration')
  expect(levelsOf(whole)).toEqual([66, 70, 74, 78, 82])
  expect(controlsOf(whole)).toEqual([74])
  expect(whole.sessions).toHaveLength(3)
  expect(planOf(whole).tasters).toHaveLength(8)
  expect(planOf(whole).serving).toBe('rested')
  expect(whole.ballots).toHaveLength(5 * 3 * 8)
  const { main, document } = foundIn(whole)
  expect(document.responses.map(({ name }) => name)).toEqual([
    'Liking',
    'Crispness',
    'Openness of crumb',
    'Stickiness at the bench',
    'Bake loss',
  ])
  if (!isPresent(main.factor) || !isPresent(main.factor.best)) throw new Error('it is answerable')
  expect(main.factor.best.answer).toBe('inside')
})

test('the pan loaf: four levels, one session, six tasters; not settled, the factor not answerable', () => {
  const whole = made('pan-loaf-salt')
  expect(levelsOf(whole)).toEqual([1.4, 1.8, 2.2, 2.6])
  expect(whole.sessions).toHaveLength(1)
  expect(planOf(whole).tasters).toHaveLength(6)
  const { main, document } = foundIn(whole)
  expect(main.factor).toMatchObject({ reason: 'needs-two-blocks', sessions: 2 })
  expect(main.conclusion).toMatchObject({ rung: 'pieces', shown: [], near: { differ: false } })
  expect(nextSteps(document, { toMend: 0 })).toEqual(['repeat'])
})

test('the flatbread: four levels, as baked, three flights; opened it shows a working day', () => {
  const whole = made('flatbread-hydration')
  const plan = planOf(whole)
  expect(levelsOf(whole)).toEqual([57, 62, 67, 72])
  expect([plan.serving, plan.flights]).toEqual(['as-baked', 3])
  expect(stageOf(whole)).toBe('working')
  const [session] = whole.sessions
  if (!session) throw new Error('the day has begun')
  // the doughs do not stand in the order of their levels, which would be the worst order of all
  const mixed = session.dealt.doughOrder.map((id) =>
    session.batches.findIndex((batch) => batch.id === id),
  )
  const values = mixed.map((at) => {
    const { levelId } = session.batches[at] ?? {}
    return plan.levels.find(({ id }) => id === levelId)?.value ?? 0
  })
  expect(values).not.toEqual(values.toSorted((one, other) => one - other))
  expect(values).not.toEqual(values.toSorted((one, other) => other - one))
  // three minutes after the last line, as the app opens it
  const now = Math.max(...whole.events.map(({ at }) => at)) + hour / 20
  const next = agenda(session, plan, effectiveEvents(whole.events), now)
  const [first] = next
  if (!first) throw new Error('there is something to do')
  const steps = next.filter(({ unit }) => unit.kind === 'batch').map(({ step }) => step.kind)
  expect(steps).toContain('fold')
  expect(first.lateSeconds).toBeGreaterThan(-5 * 60)
  expect(first.lateSeconds).toBeLessThan(2 * 60)
  const started = whole.events
    .filter((event) => event.kind === 'step-started' && event.repeat === 1)
    .toSorted((one, other) => one.at - other.at)
    .map(({ about }) => about.id)
  expect([...new Set(started)]).toEqual(session.dealt.doughOrder)
})
