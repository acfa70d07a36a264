import { expect, test } from 'vitest'
import { render } from 'vitest-browser-react'
import { BenchPlace } from '@/app/bench/bench-place.tsx'
import { ServicesContext } from '@/app/services/services.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { begun, minutes } from '../../trial-of/made-up-day.ts'
import { sessionOf } from '../../trial-of/session-of.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { AtTrial } from '../at-trial.tsx'

let clock = begun + 5 * minutes
const chance = {
  now: () => clock,
  newId: () => crypto.randomUUID(),
  newSeed: () => 7,
  zone: 'Europe/Rome',
}

async function freshBench() {
  const notebook = createNotebook(`wild-${crypto.randomUUID()}`, chance)
  const whole = { ...wholeTrialOf(), sessions: [sessionOf()], events: [], ballots: [], photos: [] }
  expect(await notebook.importTrial(writeTrialFile(whole))).toMatchObject({ ok: true })
  const screen = await render(
    <ServicesContext value={{ notebook, ...chance }}>
      <AtTrial trialId="trial-1">
        <BenchPlace />
      </AtTrial>
    </ServicesContext>,
  )
  const kept = async () => (await notebook.wholeTrial('trial-1'))?.events ?? []
  const press = (name: string) => screen.getByRole('button', { name, exact: true }).click()
  return { screen, notebook, kept, press }
}

test('a temperature that hardly can be asks first, and is kept as it is by a second press', async () => {
  const { screen, kept, press } = await freshBench()
  await press('More to log')
  await press('Temperature')
  await expect.element(screen.getByText('Usually 2 °C to 38 °C.')).toBeVisible()
  await screen.getByLabelText('Dough temperature').fill('52')
  await press('Keep 52 °C')
  await expect.element(screen.getByRole('alert')).toHaveTextContent('Dough at 52 °C?')
  expect(await kept()).toEqual([])
  await press('Keep 52 °C as it is')
  await expect.poll(kept).toMatchObject([{ kind: 'temperature', celsius: 52 }])
})

test('too little of an ingredient says what to add, and what it makes of the level', async () => {
  const { screen, kept, press } = await freshBench()
  await press('Weigh')
  await screen.getByLabelText('On the scale').fill('5')
  await press('Keep 5 g')
  await expect.element(screen.getByRole('alert')).toHaveTextContent(/g too little: add .* g of/)
  await expect
    .element(screen.getByRole('alert'))
    .toHaveTextContent(/the level would be .* %, planned/)
  expect(await kept()).toEqual([])
})

test('a line of the log is corrected by its time of day, and one that cannot be is refused with its reason', async () => {
  const { screen, kept, press } = await freshBench()
  await press('Begin')
  await expect.element(screen.getByRole('button', { name: 'Undo “D: Mix begun”' })).toBeVisible()
  await screen
    .getByRole('button', { name: /Mix begun$/ })
    .first()
    .click()
  const time = screen.getByLabelText('It happened at')
  // Dealt at 08:00 by the kitchen clock, begun at 08:05.
  await expect.element(time).toHaveValue('08:05')
  await time.fill('7:50')
  await expect.element(screen.getByText('The session had not begun then.')).toBeVisible()
  await time.fill('8:20')
  await expect.element(screen.getByText('That is still to come.')).toBeVisible()
  await time.fill('8:02')
  await press('Keep the correction')
  await expect
    .poll(async () =>
      (await kept()).map(({ kind, at }) => `${kind} ${(at - begun) / minutes}`).toSorted(),
    )
    .toEqual(['lock 5', 'step-started 2', 'step-started 5'])
})

test('a clock that was set back is said, with what the last entry says', async () => {
  const { screen, press } = await freshBench()
  await press('Begin')
  await expect.element(screen.getByRole('button', { name: 'Undo “D: Mix begun”' })).toBeVisible()
  try {
    clock = begun - 120 * minutes
    await expect
      .element(screen.getByText(/It shows 06:00, but the last entry was made at 08:05/))
      .toBeVisible()
    await expect.element(screen.getByRole('timer').first()).toHaveTextContent('00:00')
  } finally {
    clock = begun + 5 * minutes
  }
})

test('a wild number typed in a correction asks too, and is kept as it is by a second press', async () => {
  const { screen, kept, press } = await freshBench()
  await press('More to log')
  await press('Temperature')
  await screen.getByLabelText('Dough temperature').fill('24')
  await press('Keep 24 °C')
  await screen
    .getByRole('button', { name: /Dough 24 °C$/ })
    .first()
    .click()
  await screen.getByLabelText('Temperature').fill('52')
  await press('Keep the correction')
  await expect.element(screen.getByText(/Dough at 52 °C\?/)).toBeVisible()
  expect(await kept()).toHaveLength(1)
  await press('Keep the correction as it is')
  await expect.poll(async () => (await kept()).length).toBe(2)
  expect(await kept()).toContainEqual(expect.objectContaining({ celsius: 52 }))
})

test('a press that the notebook cannot keep is said at the bench, which stays with what was typed', async () => {
  const { screen, notebook, press } = await freshBench()
  await press('More to log')
  await press('Temperature')
  await screen.getByLabelText('Dough temperature').fill('24')
  notebook.logAll = () => Promise.reject(new NotebookFailure('out-of-room'))
  await press('Keep 24 °C')
  await expect
    .element(screen.getByText('This press was not logged. This device has no room left.'))
    .toBeVisible()
  await expect.element(screen.getByLabelText('Dough temperature')).toHaveValue('24')
})

test('an end pressed hours late asks what time it ended; a wild time asks, and a time between is kept', async () => {
  const { screen, kept, press } = await freshBench()
  await press('Begin')
  await expect.element(screen.getByRole('button', { name: 'Undo “D: Mix begun”' })).toBeVisible()
  try {
    // Begun at 08:05 by the kitchen clock; now it is 14:00.
    clock = begun + 360 * minutes
    // By the plan the other dough is due sooner by now: the tab brings this one to the front.
    await screen
      .getByRole('navigation', { name: /^Doughs/ })
      .getByRole('button', { name: /^D / })
      .click()
    await screen
      .getByRole('button', { name: /^Done|^It / })
      .first()
      .click()
    const time = screen.getByLabelText('It ended at')
    await time.fill('7:30')
    await expect.element(screen.getByText(/It began at 08:05/)).toBeVisible()
    await time.fill('8:45')
    await press('It ended then')
    await expect
      .poll(async () => (await kept()).find(({ kind }) => kind === 'step-stopped')?.at)
      .toBe(begun + 45 * minutes)
  } finally {
    clock = begun + 5 * minutes
  }
})

test('a late end lies after hands off, too', async () => {
  const { screen, notebook, kept, press } = await freshBench()
  await press('Begin')
  await expect.element(screen.getByRole('button', { name: 'Undo “D: Mix begun”' })).toBeVisible()
  const start = (await kept()).find((event) => event.kind === 'step-started')
  if (start?.kind !== 'step-started') throw new Error('the mix was begun')
  const { trialId, sessionId, about, stepId, repeat } = start
  try {
    clock = begun + 10 * minutes
    await notebook.log({ kind: 'hands-off', trialId, sessionId, about, stepId, repeat })
    clock = begun + 360 * minutes
    await screen
      .getByRole('navigation', { name: /^Doughs/ })
      .getByRole('button', { name: /^D / })
      .click()
    await screen
      .getByRole('button', { name: /^Done|^It |^Rest over/ })
      .first()
      .click()
    const time = screen.getByLabelText('It ended at')
    await time.fill('8:07')
    await expect
      .element(screen.getByText(/Hands off was at 08:10\. Write a time after/))
      .toBeVisible()
    await time.fill('8:45')
    await press('It ended then')
    await expect
      .poll(async () => (await kept()).find(({ kind }) => kind === 'step-stopped')?.at)
      .toBe(begun + 45 * minutes)
  } finally {
    clock = begun + 5 * minutes
  }
})
