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
import { AtTrial } from '../at-trial.tsx'

const opened = performance.now()
const chance = {
  now: () => begun + 5 * minutes + Math.round(performance.now() - opened),
  newId: () => crypto.randomUUID(),
  newSeed: () => 7,
  zone: 'Europe/Rome',
}

const bench = (notebook: Notebook) => (
  <ServicesContext value={{ notebook, ...chance }}>
    <AtTrial trialId="trial-1">
      <BenchPlace />
    </AtTrial>
  </ServicesContext>
)

test('Begin pressed in two tabs at once begins the mix once, and the tab that came late says so', async () => {
  const name = `tabs-${crypto.randomUUID()}`
  const [here, there] = [createNotebook(name, chance), createNotebook(name, chance)]
  const whole = { ...wholeTrialOf(), sessions: [sessionOf()], events: [], ballots: [], photos: [] }
  expect(await here.importTrial(writeTrialFile(whole))).toMatchObject({ ok: true })
  const tabs = await render(
    <>
      <section aria-label="here">{bench(here)}</section>
      <section aria-label="there">{bench(there)}</section>
    </>,
  )
  const begins = tabs.getByRole('button', { name: 'Begin', exact: true })
  await expect.poll(() => begins.elements().length).toBe(2)
  for (const begin of begins.elements()) (begin as HTMLElement).click()

  const late = tabs.getByRole('alert')
  await expect.element(late).toHaveTextContent('“D: Mix begun” was logged at 08:05')
  await expect.element(late).toHaveTextContent('Nothing was logged by this press.')
  await expect
    .poll(
      () =>
        tabs.getByRole('button', { name: 'Undo “D: Mix begun”', exact: true }).elements().length,
    )
    .toBe(2)
  const events = (await here.wholeTrial('trial-1'))?.events ?? []
  expect(events.map(({ kind }) => kind).toSorted()).toEqual(['lock', 'step-started'])
})
