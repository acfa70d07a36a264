import { expect, test } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { HomePlace } from '@/app/home/home-place.tsx'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { trialAtTheTable } from '../../notebook/notebook-of.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { notebookWith, openPlace } from '../findings/open-place.tsx'

const press = (name: string | RegExp) => page.getByRole('button', { name })

const readIn = (name: string, whole: WholeTrial) =>
  userEvent.upload(
    document.querySelector('input[type=file][accept*=json]') as HTMLElement,
    new File([writeTrialFile(whole)], name, { type: 'application/json' }),
  )

/** The trial as another device went on with it: a note more in the log. */
function withNote(id: string, text: string): WholeTrial {
  const whole = wholeTrialOf()
  const [first] = whole.events
  if (!first) throw new Error('the trial of the tests has a log')
  const { trialId, sessionId, at, zone } = first
  whole.events.push({
    ...{ trialId, sessionId, at, zone, id, device: 'device-2', count: 1 },
    ...{ kind: 'note', text, about: { kind: 'batch', id: 'batch-1' } },
  })
  return whole
}

test('a file whose trial is here says which is newer and by what, and each of the three answers does what it says', async () => {
  const { services, notebook } = await notebookWith(wholeTrialOf())
  await openPlace(services, <HomePlace />)
  await expect.element(page.getByRole('list', { name: 'Trials' })).toBeVisible()
  const notes = async () =>
    (await notebook.wholeTrial('trial-1'))?.events.flatMap((event) =>
      event.kind === 'note' ? [event.text] : [],
    ) ?? []
  const before = await notes()

  await readIn('oven-phone.json', withNote('note-there', 'smells of apples'))
  const told = page.getByText(/The file is newer: it has 1 log entry that the notebook lacks\./)
  await expect.element(told).toBeVisible()
  await press('Leave the notebook as it is').click()
  await expect.element(told).not.toBeInTheDocument()
  expect(await notes()).toEqual(before)

  await readIn('oven-phone.json', withNote('note-there', 'smells of apples'))
  await press('Take in what is new').click()
  await expect.element(page.getByText('oven-phone.json: 1 log entry came in')).toBeVisible()
  expect(await notes()).toEqual([...before, 'smells of apples'])

  // The same entry with other words: what was kept here stays, and the answer names what stayed out.
  await readIn('changed.json', withNote('note-there', 'smells of pears'))
  await expect.element(page.getByText(/1 record says something else in the file\./)).toBeVisible()
  await press('Take in what is new').click()
  await expect.element(page.getByText(/it stays as it is here\./)).toBeVisible()
  expect(await notes()).toContain('smells of apples')

  await readIn('other.json', withNote('note-there', 'smells of pears'))
  await press('Keep both').click()
  await expect.poll(async () => (await notebook.summaries()).length).toBe(2)
  const wholes = await Promise.all(
    (await notebook.summaries()).map(({ trialId }) => notebook.wholeTrial(trialId)),
  )
  expect(new Set(wholes.map((whole) => whole && planInForce(whole).question)).size).toBe(1)
  expect(await notes()).not.toContain('smells of pears')
})

test('a copy that would uncover a sealed trial is asked for twice, and the look stands in its log', async () => {
  const { services, notebook } = await notebookWith(trialAtTheTable())
  await openPlace(services, <HomePlace />)
  await expect.element(page.getByRole('list', { name: 'Trials' })).toBeVisible()
  const looks = async () =>
    (await notebook.wholeTrial('trial-1'))?.events.filter(({ kind }) => kind === 'peeked').length
  await readIn('later.json', wholeTrialOf())
  await press('Keep both').click()
  await expect.element(page.getByText('the copy shows its levels and weights')).toBeVisible()
  expect(await notebook.summaries()).toHaveLength(1)
  expect(await looks()).toBe(0)
  await press('Look, and keep both').click()
  await expect.poll(async () => (await notebook.summaries()).length).toBe(2)
  expect(await looks()).toBe(1)
})

test('the file of a thrown-out trial says where it lies and takes it back; a packed file names the way of a backup', async () => {
  const { services, notebook } = await notebookWith(wholeTrialOf())
  await notebook.bin('trial-1', true)
  await openPlace(services, <HomePlace />)
  await expect.element(press('New trial').first()).toBeVisible()
  await readIn('again.json', wholeTrialOf())
  await expect.element(page.getByText('The one here lies under Thrown out.')).toBeVisible()
  await press('Take the one here back').click()
  await expect.poll(() => notebook.shelfNow('trial-1')).toBe('book')
  await userEvent.upload(
    document.querySelector('input[type=file][accept*=json]') as HTMLElement,
    new File(['PK\u0003\u0004and so on'], 'trials.json', { type: 'application/json' }),
  )
  await expect.element(page.getByText('A backup comes back by “Restore a backup”')).toBeVisible()
})

test('a trial that another window erased stands as erased, without an undo', async () => {
  const { services, notebook } = await notebookWith(wholeTrialOf())
  const other = writeTrialFile(withNote('note-there', 'smells of apples'))
  await notebook.importTrial(other, { keepBoth: true })
  await notebook.log({
    ...{ kind: 'note', text: 'x', trialId: 'trial-1', sessionId: null },
    about: { kind: 'trial', id: 'trial-1' },
  })
  await openPlace(services, <HomePlace />)
  await press(/^More: /)
    .first()
    .click()
  await press(/^Throw out: /).click()
  await expect.element(press('Undo')).toBeVisible()
  const [thrownOut] = (await notebook.summaries({ binned: true })).filter(({ binned }) => binned)
  expect(await notebook.erase(thrownOut?.trialId ?? '')).toBe(true)
  await expect.element(page.getByText('Erased for good:')).toBeVisible()
  await expect.element(press('Undo')).not.toBeInTheDocument()
})
