import { expect, test } from 'vitest'
import { render } from 'vitest-browser-react'
import { BenchPlace } from '@/app/bench/bench-place.tsx'
import { ServicesContext } from '@/app/services/services.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import type { OpenNotebook as Notebook } from '@/notebook/notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { begun, minutes } from '../../trial-of/made-up-day.ts'
import { sessionOf } from '../../trial-of/session-of.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { AtTrial } from '../at-trial.tsx'

let ids = 0
const opened = performance.now()
const chance = {
  now: () => begun + 5 * minutes + Math.round(performance.now() - opened),
  newId: () => `made-${++ids}`,
  newSeed: () => 7,
  zone: 'Europe/Rome',
}

/** A notebook with a dealt session in which nothing has happened yet. */
async function freshDay(): Promise<Notebook> {
  const notebook = createNotebook(`bench-${performance.timeOrigin}-${++ids}`, chance)
  const whole = { ...wholeTrialOf(), sessions: [sessionOf()], events: [], ballots: [], photos: [] }
  const read = await notebook.importTrial(writeTrialFile(whole))
  if (!read.ok) throw new Error(JSON.stringify(read))
  return notebook
}

const bench = (notebook: Notebook) => (
  <ServicesContext value={{ notebook, ...chance }}>
    <AtTrial trialId="trial-1">
      <BenchPlace />
    </AtTrial>
  </ServicesContext>
)
const kinds = async (notebook: Notebook) =>
  (await notebook.wholeTrial('trial-1'))?.events.map(({ kind }) => kind).toSorted()

test('a press is on disk at once: the bench opened anew shows the step running, and undo takes the press back', async () => {
  const notebook = await freshDay()
  const first = await render(bench(notebook))
  // Dough order of the session: D (batch-2) first.
  await first.getByRole('button', { name: 'Begin', exact: true }).click()
  await expect.element(first.getByRole('button', { name: 'Undo “D: Mix begun”' })).toBeVisible()
  expect(await kinds(notebook)).toEqual(['lock', 'step-started'])
  await first.unmount()

  const again = await render(bench(notebook))
  await again.getByRole('button', { name: 'Undo “D: Mix begun”' }).click()
  await expect
    .element(again.getByRole('button', { name: 'Undo “D: Mix begun”' }))
    .not.toBeInTheDocument()
  // The lock of the first mix stays: what was expected is written down for good.
  expect(await kinds(notebook)).toEqual(['lock', 'step-started', 'void'])
})

test('a press that ends one step and begins the next is named by both at undo', async () => {
  const screen = await render(bench(await freshDay()))
  await screen.getByRole('button', { name: 'Begin', exact: true }).click()
  await screen.getByRole('button', { name: 'It makes a windowpane: done and Proof begins' }).click()
  await expect
    .element(screen.getByRole('button', { name: 'Undo “D: Mix done” and “Proof begun”' }))
    .toBeVisible()
})

test('a step that ends by a mark is ended by the mark, not by the clock', async () => {
  const notebook = await freshDay()
  const screen = await render(bench(notebook))
  await screen.getByRole('button', { name: 'Begin', exact: true }).click()
  await expect.element(screen.getByText('Ends by a windowpane, not by the clock.')).toBeVisible()
  // What the clock is made of stays in view while it runs.
  await expect
    .element(screen.getByText('about 5 min of work, then 30 min of waiting'))
    .toBeVisible()
  await screen.getByRole('button', { name: /^It makes a windowpane: done/ }).click()
  await expect
    .element(screen.getByRole('button', { name: 'Undo “D: Mix done” and “Proof begun”' }))
    .toBeVisible()
})

test('before anything is weighed weighing is the first key, and one press takes the planned reading', async () => {
  const notebook = await freshDay()
  const screen = await render(bench(notebook))
  await screen.getByRole('button', { name: 'Weigh', exact: true }).click()
  await screen.getByRole('button', { name: /^The scale shows/ }).click()
  await expect
    .element(screen.getByRole('button', { name: /^Undo “D: Bread flour .* g into the Poolish”$/ }))
    .toBeVisible()
})

test('a step that is not done is skipped by one press: nothing begins, the next is asked for, and the log shows it as otherwise than planned', async () => {
  const notebook = await freshDay()
  const screen = await render(bench(notebook))
  await screen.getByRole('button', { name: 'More to log' }).click()
  await screen.getByRole('button', { name: 'Skip Mix' }).click()
  await expect.element(screen.getByRole('button', { name: 'Undo “D: Mix skipped”' })).toBeVisible()
  await expect.element(screen.getByText('D: Mix was skipped.')).toBeVisible()
})
