import type { ReactNode } from 'react'
import { afterEach, expect, test } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { DayWishesFields } from '@/app/plan/clock/day-wishes-fields.tsx'
import { OtherDays } from '@/app/plan/clock/other-days.tsx'
import { KitchenSection } from '@/app/plan/kitchen/kitchen-section.tsx'
import { StepFields } from '@/app/plan/method/step-fields.tsx'
import { PlanPageContext, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { createPlanPage } from '@/app/plan/page/plan-page-store.ts'
import { ServicesContext } from '@/app/services/services.ts'
import { plannedDay } from '@/core/clock-plan/planned-day.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plainManner, writeAs } from '@/core/units/manner.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { chilled, quiet, saturday, zone } from '../../core/clock-plan/other-days/chilled-day.ts'
import { madeSession } from '../../core/session/made-session.ts'

const chance = {
  now: () => Date.now(),
  newId: () => crypto.randomUUID(),
  newSeed: () => 7,
  zone: 'Europe/Rome',
}

function Fields() {
  const plan = usePlanPage((one) => one.plan)
  const at = plan.steps.findIndex(({ kind }) => kind === 'bake')
  const bake = plan.steps[at]
  return (
    <>
      <DayWishesFields plan={plan} />
      {bake ? <StepFields step={bake} index={at} /> : null}
    </>
  )
}

afterEach(() => writeAs(plainManner))

/** A plan page of its own with such a plan, kept in a notebook. */
async function pageOf(change: (plan: Plan) => Plan, kitchen: KitchenThing[] = []) {
  const notebook = createNotebook(`step-${chance.newId()}`, chance)
  for (const thing of kitchen) await notebook.keepKitchenThing(thing)
  const plan = startingPlan({ newId: chance.newId, at: chance.now(), zone: chance.zone })
  const trialId = await notebook.createTrial(change(plan))
  const whole = await notebook.wholeTrial(trialId)
  if (!whole) throw new Error('the trial was made')
  const base = { plan: planInForce(whole), trialRevision: whole.trial.revision }
  const store = createPlanPage(base, {}, kitchen, {
    keepPlan: (next, from) => notebook.keepPlan(next, from),
    keepDrafts: async () => {},
    judge: () => [],
    refuses: () => null,
  })
  const shown = (children: ReactNode) => (
    <ServicesContext value={{ notebook, ...chance }}>
      <PlanPageContext value={store}>{children}</PlanPageContext>
    </ServicesContext>
  )
  return { store, shown }
}

async function opened() {
  const { store, shown } = await pageOf((plan) => ({ ...plan, pairsOfHands: 2 }))
  await render(shown(<Fields />))
  return store
}

function Days() {
  const plan = usePlanPage((one) => one.plan)
  return <OtherDays plan={plan} session={madeSession(plan)} />
}

test('days that differ in kind stand side by side, on a phone one under the other; a press takes one, and the planned day follows it', async () => {
  await page.viewport(1280, 900)
  const day = { fixed: { what: 'eat', at: saturday(18) }, quiet } as const
  const { store, shown } = await pageOf(({ id, trialId }) => ({
    ...chilled(4, day),
    ...{ id, trialId, zone, tasters: [] },
  }))
  const screen = await render(shown(<Days />))
  const heading = (name: RegExp) => screen.getByRole('heading', { name })
  const today = heading(/^Mix Saturday \d\d:\d\d, eat 18:00$/)
  const night = heading(/^Mix Friday \d\d:\d\d, eat Saturday 18:00$/)
  await expect.element(today).toBeVisible()
  await expect.element(night).toBeVisible()
  const [first, second] = [today, night].map((each) => each.element().getBoundingClientRect())
  expect(second?.top).toBe(first?.top)
  expect(second?.left).toBeGreaterThan(first?.right ?? 0)
  await page.viewport(360, 640)
  const top = (each: typeof today) => each.element().getBoundingClientRect().top
  await expect.poll(() => top(night) > top(today)).toBe(true)
  expect(document.documentElement.scrollWidth).toBe(360)
  const takes = screen.getByRole('button', { name: 'Take this day', exact: true })
  expect(takes.all()).toHaveLength(2)
  for (const each of takes.all())
    expect(each.element().getBoundingClientRect().height).toBeGreaterThanOrEqual(44)
  await takes.nth(1).click()
  const cold = () => store.getState().plan.steps.find(({ id }) => id === 'cold')?.waitSeconds ?? 0
  expect(cold()).toBeGreaterThan(4 * 3600)
  expect(store.getState().plan.day?.kept).toBeDefined()
  expect(store.getState().undo?.said).toMatch(/^The day lies so: Mix Friday/)
  const { plan } = store.getState()
  expect(plannedDay(plan, madeSession(plan)).startAt).toBeLessThan(saturday(0))
})

test('a bake says its pull, its recovery and its one person; the night has its own hours, mixers and fridge their number', async () => {
  const store = await opened()
  await page.getByLabelText('Pulling takes').fill('20')
  await page.getByLabelText('Hot again after a load').fill('240')
  await page.getByLabelText('The same person does it for all doughs').click()
  await page.getByLabelText('Mixers at once').fill('2')
  await page.getByLabelText('The fridge holds at once').fill('6')
  await page.getByLabelText('on from when I start').click()
  await page.getByLabelText('The night begins at').fill('22:15')
  const kept = () => {
    const now = store.getState().plan
    return { bake: now.steps.find(({ kind }) => kind === 'bake'), day: now.day }
  }
  await expect.poll(kept).toMatchObject({
    bake: { pullSeconds: 20, recoverySeconds: 240, samePerson: true },
    day: { mixers: 2, fridgePlaces: 6, quiet: { fromMinutes: 22 * 60 + 15, toMinutes: 390 } },
  })
})

test('what the kitchen says of the chosen oven is taken by one press, and then stands no longer beside it', async () => {
  const oven: KitchenThing = {
    ...{ id: 'deck', kind: 'oven', name: 'deck', places: 2, recoverySeconds: 150 },
  }
  const { store, shown } = await pageOf((plan) => ({ ...plan, kitchenIds: ['deck'] }), [oven])
  const screen = await render(shown(<KitchenSection />))
  const take = screen.getByRole('button', { name: 'Take these times', exact: true })
  await expect
    .element(
      screen.getByText('The kitchen now says of the oven: Hot again 2 min 30 s after a load.'),
    )
    .toBeVisible()
  await take.click()
  await expect.element(take).not.toBeInTheDocument()
  expect(store.getState().plan.day).toEqual({ recoverySeconds: 150 })
})

test('by 12 hours a time is typed and read back with am and pm, on the day that was chosen; what is none stays and says so', async () => {
  writeAs({ ...plainManner, hours: '12' })
  const store = await opened()
  const day = () => store.getState().plan.day
  await page.getByLabelText('back from when we eat').click()
  await page.getByLabelText('We eat on').fill('2026-12-05')
  const eat = page.getByLabelText('We eat at', { exact: true })
  await eat.fill('18h30')
  await expect.element(eat).toHaveAccessibleDescription('Read as 6:30 pm.')
  await userEvent.tab()
  await expect.element(eat).toHaveValue('6:30 pm')
  // Rome in December stands one hour ahead of UTC.
  expect(day()?.fixed?.at).toBe(Date.UTC(2026, 11, 5, 17, 30))

  const night = page.getByLabelText('The night begins at')
  await expect.element(night).toHaveValue('11:00 pm')
  await night.fill('half eleven')
  await userEvent.tab()
  await expect
    .element(page.getByRole('alert'))
    .toHaveTextContent('The night begins at: write the time of day, such as 14:05 or 2:05 pm.')
  await expect.element(night).toHaveValue('half eleven')
  expect(day()?.quiet?.fromMinutes).toBe(23 * 60)
  expect(store.getState().drafts['plan-clock/night-begins']).toBe('half eleven')
  await night.fill('10:15pm')
  await expect.poll(() => day()?.quiet?.fromMinutes).toBe(22 * 60 + 15)
})
