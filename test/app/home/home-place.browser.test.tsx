import { afterEach, beforeEach, expect, test } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { Menu } from '@/app/frame/menu.tsx'
import { HomePlace } from '@/app/home/home-place.tsx'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import focaccia from '../../../trials/focaccia-hydration.json?raw'
import { sessionOf } from '../../trial-of/session-of.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
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

const press = (name: string | RegExp) => page.getByRole('button', { name })

async function open(...files: (string | WholeTrial)[]) {
  const { services, notebook } = await notebookWith(...files)
  await openPlace(
    services,
    <>
      <Menu />
      <HomePlace />
    </>,
  )
  await expect.element(page.getByRole('heading', { name: 'Sample trials' })).toBeVisible()
  return notebook
}

/** One ballot is in and nobody gave the codes away; the question names its levels. */
function sealed(): WholeTrial {
  const whole = wholeTrialOf()
  const plans = whole.plans.map((plan) => ({
    ...plan,
    question: 'Is 71.7 better than 66.4?',
    levels: [
      { id: 'level-1', value: 66.4, label: '66.4', control: true },
      { id: 'level-2', value: 71.7, label: '71.7', control: false },
    ],
  }))
  const ballots = whole.ballots.slice(0, 1)
  return { ...whole, plans, sessions: [sessionOf()], ballots, events: [], photos: [] }
}

const readIn = (name: string, text: string) =>
  userEvent.upload(
    document.querySelector('input[type=file][accept*=json]') as HTMLElement,
    new File([text], name, { type: 'application/json' }),
  )

test('the book covers a sealed trial, and a backup says first what it gives away', async () => {
  await open(sealed())
  await expect.element(page.getByRole('list', { name: 'Trials' })).toBeVisible()
  expect(document.body.textContent).not.toMatch(/71\.7|66\.4/)
  const files = await filesSavedBy(async () => {
    await press('Menu').click()
    await press('Back up all').click()
    await expect.element(page.getByText('Back up while a tasting is sealed?')).toBeVisible()
    await press('Not now').click()
  })
  expect(files.size).toBe(0)
  expect(complaints).toEqual([])
})

test('a file that was read in says so, one that is no trial says where it fails, and a failure can be tried again', async () => {
  const notebook = await open()
  const file = writeTrialFile(wholeTrialOf())
  await readIn('cut.json', file.slice(0, 200))
  await expect.element(page.getByText(/cut\.json/).first()).toBeVisible()
  expect(await notebook.summaries()).toEqual([])

  const { importTrial } = notebook
  notebook.importTrial = async () => {
    throw new NotebookFailure('out-of-room')
  }
  await readIn('club.json', file)
  await expect.element(page.getByText(/This device has no room left\./)).toBeVisible()
  notebook.importTrial = importTrial
  await press('Try again').click()
  await expect.element(page.getByText('club.json came in')).toBeVisible()
  await readIn('club.json', file)
  await expect.element(page.getByText('club.json is here already')).toBeVisible()
  expect(await notebook.summaries()).toHaveLength(1)
  expect(complaints).toEqual([])
})

test('the book finds the answers nobody opened Findings for, sorts trials out, and shows a line of questions', async () => {
  const notebook = await open(focaccia)
  await expect
    .element(page.getByText(/It holds .* whenever the doughs are made again/))
    .toBeVisible()
  const [found] = await notebook.summaries()
  expect(found?.answer).toMatch(/whenever the doughs are made again/)

  const whole = await notebook.wholeTrial(found?.trialId ?? '')
  const plan = whole?.plans[0]
  if (!whole || !plan) throw new Error('a trial that was read in has a plan')
  for (const [trialId, question] of [
    ['next', 'And between these two?'],
    ['salt', 'Less salt?'],
  ] as const)
    await notebook.createTrial(
      { ...plan, id: `${trialId}-plan`, trialId, revision: 1, question },
      trialId === 'next' ? { follows: { trialId: whole.trial.id, how: 'narrows' } } : {},
    )
  const chain = page.getByRole('region', { name: 'Lines of questions' })
  await expect.element(chain.getByText(/asked to narrow down/)).toBeVisible()
  await press(/^Which and in what order All trials/).click()
  await page.getByLabelText('Where it stands').selectOptions('In planning')
  const lines = page.getByRole('list', { name: 'Trials' }).getByRole('heading')
  await expect.poll(() => lines.elements().length).toBe(2)
  await page.getByRole('button', { name: 'Show all again' }).click()
  await page.getByLabelText('Search').fill('made again')
  await expect.poll(() => lines.elements().length).toBe(1)
  expect(complaints).toEqual([])
})
