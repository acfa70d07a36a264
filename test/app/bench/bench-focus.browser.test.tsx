import { expect, test } from 'vitest'
import { userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import { BenchPlace } from '@/app/bench/bench-place.tsx'
import { keepFocus } from '@/app/kit/press/keep-focus.ts'
import { ServicesContext } from '@/app/services/services.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
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

/** The bench of a dealt session in which nothing has happened yet. */
async function freshBench() {
  const notebook = createNotebook(`focus-${performance.timeOrigin}-${++ids}`, chance)
  const whole = { ...wholeTrialOf(), sessions: [sessionOf()], events: [], ballots: [], photos: [] }
  const read = await notebook.importTrial(writeTrialFile(whole))
  if (!read.ok) throw new Error(JSON.stringify(read))
  const screen = await render(
    <ServicesContext value={{ notebook, ...chance }}>
      <div ref={keepFocus}>
        <AtTrial trialId="trial-1">
          <BenchPlace />
        </AtTrial>
      </div>
    </ServicesContext>,
  )
  /** A press by the keyboard. */
  const press = async (name: string | RegExp) => {
    const button = screen.getByRole('button', { name, exact: typeof name === 'string' }).first()
    await expect.element(button).toBeEnabled()
    ;(button.element() as HTMLElement).focus()
    await userEvent.keyboard('{Enter}')
  }
  const heading = (name: string) => screen.getByRole('heading', { name, exact: true })
  return { screen, press, heading }
}

test('focus goes to what a key opened, from weight to weight, and back to the step in front', async () => {
  const { screen, press, heading } = await freshBench()
  await press('Weigh')
  await expect
    .element(screen.getByText('Bread flour, for the Poolish', { exact: true }).first())
    .toHaveFocus()
  await press(/^The scale shows/)
  await expect
    .element(screen.getByText('Water, for the Poolish', { exact: true }).first())
    .toHaveFocus()
  await press('Back')
  await expect.element(heading('Mix')).toHaveFocus()
})

test('focus goes to the next step when one is done, and to the step when the cautions are read', async () => {
  const { press, heading } = await freshBench()
  await press('More to log')
  await press('Skip Mix')
  await expect.element(heading('Proof')).toHaveFocus()
  await press(/^Before the first bake/)
  await press('Read, and kept in mind')
  await expect.element(heading('Proof')).toHaveFocus()
})

test('focus goes back to the line of the log that was left as it is, and to the log when the line was mended', async () => {
  const { screen, press, heading } = await freshBench()
  await press('Begin')
  await expect.element(heading('Log')).toBeVisible()
  await press(/Mix begun$/)
  await press('Leave it')
  await expect.element(screen.getByRole('button', { name: /Mix begun$/ }).first()).toHaveFocus()
  await press(/Mix begun$/)
  await press('Keep the correction')
  await expect.element(heading('Log')).toHaveFocus()
})
