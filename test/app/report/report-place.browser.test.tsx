import { afterEach, beforeEach, expect, test } from 'vitest'
import { page } from 'vitest/browser'
import { failedWork, forgetFailedWork } from '@/app/kit/page/failed-work.ts'
import { ReportPlace } from '@/app/report/report-place.tsx'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'
import finished from '../../../trials/focaccia-hydration.json?raw'
import { sessionOf } from '../../trial-of/session-of.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { AtTrial } from '../at-trial.tsx'
import { notebookWith, openPlace } from '../findings/open-place.tsx'
import { filesSavedBy } from '../saved-files.ts'

const say = console.error
const complaints: string[] = []
beforeEach(() => {
  complaints.length = 0
  console.error = (...words: unknown[]) => complaints.push(words.map(String).join(' '))
})
afterEach(() => {
  console.error = say
})

const press = (name: string) => page.getByRole('button', { name, exact: true })

async function open(file: string | WholeTrial) {
  const { services, trialIds, notebook } = await notebookWith(file)
  const [trialId = ''] = trialIds
  await openPlace(
    services,
    <AtTrial trialId={trialId}>
      <ReportPlace />
    </AtTrial>,
  )
  return { notebook, trialId }
}

/** One ballot is in and nobody gave the codes away. */
function sealed(): WholeTrial {
  const whole = wholeTrialOf()
  return {
    ...whole,
    sessions: [sessionOf()],
    ballots: whole.ballots.slice(0, 1),
    events: [],
    photos: [],
  }
}

test('while codes are kept there is no report and nothing to download, but the way to the tasting', async () => {
  await open(sealed())
  await expect.element(page.getByText('Still sealed')).toBeVisible()
  await expect
    .element(page.getByRole('link', { name: 'Go to the tasting' }))
    .toHaveAttribute('href', expect.stringContaining('/tasting'))
  await expect.element(page.getByRole('article')).not.toBeInTheDocument()
  expect(page.getByRole('button').elements()).toEqual([])
  for (const { label } of wholeTrialOf().plans[0]?.levels ?? [])
    expect(document.body.textContent).not.toContain(label)
  expect(complaints).toEqual([])
})

test('every download hands out a file of its own name and kind', async () => {
  const { notebook, trialId } = await open(finished)
  await expect.element(press('Report as HTML')).toBeVisible()
  const exported = await notebook.exportTrial(trialId)
  const files = await filesSavedBy(async () => {
    for (const name of ['Report as HTML', 'Report as Markdown', 'Values as CSV', 'Trial file'])
      await press(name).click()
    await expect.poll(() => press('Trial file').element().getAttribute('aria-busy')).toBeNull()
  })
  const byEnd = (end: string) => [...files].find(([name]) => name.endsWith(end))?.[1] ?? ''
  expect(files.size).toBe(4)
  expect(byEnd('.html')).toMatch(/^<!doctype html>/i)
  expect(byEnd('.md')).toMatch(/^# /)
  // A line a value, under one line of names.
  expect(byEnd('.csv').trim().split('\n').length).toBeGreaterThan(10)
  expect(files.get(exported.name)).toBe(exported.text)
  expect(complaints).toEqual([])
})

test('a download that fails is told, the document and its presses stay; a fault of the program says so in their place', async () => {
  const { notebook } = await open(finished)
  await expect.element(press('Trial file')).toBeVisible()
  const { exportTrial } = notebook
  notebook.exportTrial = async () => {
    throw new NotebookFailure('out-of-room')
  }
  await press('Trial file').click()
  await expect.poll(() => failedWork.getState().last?.reason).toBe('out-of-room')
  forgetFailedWork()
  await expect.element(press('Trial file')).toBeVisible()
  notebook.exportTrial = async () => {
    throw new Error('planted in the export')
  }
  await press('Trial file').click()
  await expect.element(page.getByText('Something went wrong in the downloads.')).toBeVisible()
  await expect.element(page.getByText('planted in the export')).toBeVisible()
  await expect.element(page.getByRole('article')).toBeVisible()
  notebook.exportTrial = exportTrial
  await press('Try again').click()
  await expect.element(press('Trial file')).toBeVisible()
})
