import { expect, test } from 'vitest'
import { render } from 'vitest-browser-react'
import { BenchPlace } from '@/app/bench/bench-place.tsx'
import { ServicesContext } from '@/app/services/services.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { begun, minutes } from '../../trial-of/made-up-day.ts'
import { planOf } from '../../trial-of/plan-of.ts'
import { sessionOf } from '../../trial-of/session-of.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { AtTrial } from '../at-trial.tsx'

const opened = performance.now()
const chance = {
  now: () => begun + 5 * minutes + Math.round(performance.now() - opened),
  newId: () => crypto.randomUUID(),
  newSeed: () => 7,
  zone: 'Europe/Rome',
}

/** A bench whose mix ends by the clock: 5 min of work, then 30 min of rest. */
async function freshBench(events: Event[] = [], session: Session = sessionOf()) {
  const notebook = createNotebook(`rest-${crypto.randomUUID()}`, chance)
  const plan = planOf()
  const steps = plan.steps.map((step) =>
    step.id === 'step-mix' ? { ...step, endsBy: { by: 'clock' as const } } : step,
  )
  const whole = { ...wholeTrialOf(), plans: [{ ...plan, steps }], sessions: [session] }
  const read = await notebook.importTrial(
    writeTrialFile({
      ...whole,
      trial: { ...whole.trial, planId: plan.id },
      events,
      ballots: [],
      photos: [],
    }),
  )
  expect(read).toMatchObject({ ok: true })
  const screen = await render(
    <ServicesContext value={{ notebook, ...chance }}>
      <AtTrial trialId="trial-1">
        <BenchPlace />
      </AtTrial>
    </ServicesContext>,
  )
  const kept = async () =>
    ((await notebook.wholeTrial('trial-1'))?.events ?? [])
      .toSorted((one, other) => one.count - other.count)
      .map(({ kind }) => kind)
  const press = (name: string) => screen.getByRole('button', { name, exact: true }).click()
  return { screen, kept, press }
}

test('after the work hands off begins the rest; ending it early asks once, with what it costs', async () => {
  const { screen, kept, press } = await freshBench()
  await press('Begin')
  await press('Hands off')
  await expect
    .element(screen.getByRole('button', { name: 'Undo “D: Mix: hands off”' }))
    .toBeVisible()
  // The other dough is to be begun sooner than this rest ends, so it came to the front: its clock brings this one back.
  await screen
    .getByRole('navigation', { name: /^Doughs/ })
    .getByRole('button', { name: /^D / })
    .click()
  const restOver = () => screen.getByRole('button', { name: /^Rest over/ }).click()
  await restOver()
  await expect
    .element(screen.getByRole('alert'))
    .toHaveTextContent('are left: ended now it has had')
  expect(await kept()).toEqual(['lock', 'step-started', 'hands-off'])
  await press('Let it rest')
  await restOver()
  await press('End the rest now')
  await expect
    .poll(kept)
    .toEqual(['lock', 'step-started', 'hands-off', 'step-stopped', 'step-started'])
})

test('skipping a step starts nothing: the next one waits to be begun', async () => {
  const { screen, kept, press } = await freshBench()
  await press('More to log')
  await press('Skip Mix')
  await expect.element(screen.getByRole('heading', { name: 'Proof', exact: true })).toBeVisible()
  expect(await kept()).toEqual(['step-skipped'])
  await expect.element(screen.getByRole('button', { name: 'Begin', exact: true })).toBeVisible()
})

/** The same session with no piece baked before those that count. */
function withoutWarmUp(): Session {
  const { pieces, dealt, ...session } = sessionOf()
  return {
    ...{ ...session, pieces: pieces.filter(({ role }) => role === 'counted') },
    dealt: {
      ...dealt,
      loads: dealt.loads.slice(1).map((load) => ({ ...load, number: 1 })),
      servings: dealt.servings.filter(({ flightId }) => flightId !== null),
    },
  }
}

test('a rest that is long over is said with what it does to the others; one press lets them wait as long', async () => {
  const stamps = [
    ['step-started', 'batch-2', -38],
    ['hands-off', 'batch-2', -33],
    ['step-started', 'batch-1', -28],
    ['hands-off', 'batch-1', -23],
  ] as const
  const events = stamps.map(
    ([kind, id, at], count): Event => ({
      ...{ id: `e-${count}`, trialId: 'trial-1', sessionId: 'session-1', device: 'device-1' },
      ...{ count: count + 1, at: begun + at * minutes, zone: 'Europe/Rome' },
      ...{ kind, stepId: 'step-mix', repeat: 1, about: { kind: 'batch', id } },
    }),
  )
  const { screen, kept } = await freshBench(events, withoutWarmUp())
  const anew = screen.getByRole('region', { name: 'The day made anew' })
  await expect
    .element(anew)
    .toHaveTextContent(/D is \d+ min past its Mix. Going on: .*all is done at/)
  await screen.getByRole('button', { name: /^Let K wait .* longer too$/ }).click()
  await expect.poll(kept).toContain('wait-changed')
  await expect.element(anew).not.toHaveTextContent('Let K wait')
})
