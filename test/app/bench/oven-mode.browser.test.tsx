import axe from 'axe-core'
import { afterEach, expect, test, vi } from 'vitest'
import { page } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import { BenchPlace } from '@/app/bench/bench-place.tsx'
import { ServicesContext } from '@/app/services/services.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { begun, minutes } from '../../trial-of/made-up-day.ts'
import { planOf } from '../../trial-of/plan-of.ts'
import { sessionOf } from '../../trial-of/session-of.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { AtTrial } from '../at-trial.tsx'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'

let clock = begun + 5 * minutes
const chance = {
  now: () => clock,
  newId: () => crypto.randomUUID(),
  newSeed: () => 7,
  zone: 'Europe/Rome',
}

afterEach(() => {
  clock = begun + 5 * minutes
  vi.restoreAllMocks()
})

/** The bench of a session whose pieces go straight into the oven, for four minutes. */
async function atTheOven() {
  await page.viewport(360, 640)
  const notebook = createNotebook(`oven-${crypto.randomUUID()}`, chance)
  const plan = planOf()
  const steps = plan.steps
    .filter(({ kind }) => kind === 'bake')
    .map((step) => ({
      ...{ ...step, endsBy: { by: 'clock' as const } },
      ...{ handsSeconds: 20, waitSeconds: 240, earlySeconds: 5, lateSeconds: 5 },
    }))
  const whole = { ...wholeTrialOf(), plans: [{ ...plan, steps }], sessions: [sessionOf()] }
  const trial = { ...whole.trial, planId: plan.id }
  const read = await notebook.importTrial(
    writeTrialFile({ ...whole, trial, events: [], ballots: [], photos: [] }),
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
  const now = screen.getByRole('region', { name: 'Now' })
  const press = (name: string | RegExp) =>
    screen
      .getByRole('button', { name, exact: typeof name === 'string' })
      .first()
      .click()
  /** The oven has two places: a press each, and what comes out first stands in front. */
  const launchTwo = async () => {
    await press(/^Launch D/)
    await press(/^Launch K/)
    await expect.poll(kept).toEqual(['bake-in', 'bake-in'])
    await expect.element(now.getByRole('heading', { name: 'In the oven' })).toBeVisible()
  }
  return { screen, notebook, kept, press, now, launchTwo }
}

test('one press launches and the next pulls, with the cautions as one line until they are read; no fault in light or dark', async () => {
  const { screen, notebook, kept, press, now, launchTwo } = await atTheOven()
  const caution = screen.getByRole('button', { name: /^Hot oven, carbon monoxide/ })
  await expect.element(caution).toBeVisible()
  const launch = screen.getByRole('button', { name: /^Launch/ }).first()
  // The line pushes nothing below the screen.
  expect(launch.element().getBoundingClientRect().bottom).toBeLessThanOrEqual(640)
  await launchTwo()
  await expect.element(now.getByRole('timer')).toHaveTextContent('04:00')
  for (const appearance of ['light', 'dark']) {
    document.documentElement.dataset.appearance = appearance
    const { violations } = await axe.run(screen.container, {
      rules: { region: { enabled: false } },
    })
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([])
  }
  delete document.documentElement.dataset.appearance
  await press(/^Hot oven/)
  await press('Later')
  await expect.element(caution).toBeVisible()
  await press(/^Hot oven/)
  await press('Read, and kept in mind')
  await expect.element(caution).not.toBeInTheDocument()
  expect((await notebook.settings()).cautionsSeen).toContain('oven')
  clock += 4 * minutes + 10_000
  await expect.element(now.getByRole('timer')).toHaveTextContent('+00:10')
  await press(/^Pull/)
  await expect.poll(kept).toEqual(['bake-in', 'bake-in', 'bake-out'])
})

test('a bake that is over buzzes at its moment, once for each, while the page runs, and nothing is told as missed', async () => {
  const buzz = vi.spyOn(navigator, 'vibrate').mockReturnValue(true)
  const { screen, now, launchTwo } = await atTheOven()
  await launchTwo()
  clock += 4 * minutes - 4000
  await expect.element(now.getByRole('timer')).toHaveTextContent('00:04')
  expect(buzz).not.toHaveBeenCalled()
  // A page looks at what is due every second, and at once as it comes into sight: where it has not looked for more than a quarter
  // of a minute of this clock, it could not have rung.
  document.dispatchEvent(new Event('visibilitychange'))
  clock += 5000
  await expect.poll(() => buzz.mock.calls.length).toBe(2)
  expect(screen.getByText(/while this page could not ring/).elements()).toEqual([])
})
