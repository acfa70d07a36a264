import { expect, test } from 'vitest'
import { page } from 'vitest/browser'
import { StartPlace } from '@/app/home/start/start-place.tsx'
import { adoptLevel } from '@/core/house/adopt-level.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { sessionOf } from '../../trial-of/session-of.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { notebookWith, openPlace } from '../findings/open-place.tsx'

/** One ballot is in and nobody gave the codes away. */
function sealed(): WholeTrial {
  const whole = wholeTrialOf()
  const ballots = whole.ballots.slice(0, 1)
  return { ...whole, sessions: [sessionOf()], ballots, events: [], photos: [] }
}

const press = (name: string | RegExp) => page.getByRole('button', { name })
const title = page.getByRole('heading', { name: 'The plan that most likely answers', exact: true })

async function toProposal(change: RegExp) {
  await press(change).click()
  await press(/^Two Fridays/).click()
  await expect.element(title).toBeVisible()
}

test('each way into a trial leads to the other questions and a proposal; a sealed trial is asked for twice', async () => {
  const { services, notebook, trialIds } = await notebookWith(sealed())
  const [plan] = wholeTrialOf().plans
  const level = plan?.levels[0]
  if (!plan || !level) throw new Error('no plan')
  const restsOn = {
    ...{ trialId: 'elsewhere', question: plan.question, level: '66.4 %', said: '' },
    ...{ because: 'picked' as const, sessions: 1, tasters: 1 },
  }
  const adopted = adoptLevel(plan, level, restsOn, { at: 1, zone: 'Europe/Rome' })
  if (!adopted.ok) throw new Error(adopted.trouble.reason)
  const dated = { id: 'house-1', name: 'Saturday bread', createdAt: 1 }
  await notebook.keepHouse({ ...dated, revisions: [adopted.revision] })

  await openPlace(services, <StartPlace />)
  await press(/^From a house formula/).click()
  await press(/^Saturday bread/).click()
  await toProposal(/^Water/)
  await press(/^Take this plan$/).click()
  const taken = async () => {
    const made = (await notebook.summaries()).find(({ trialId }) => !trialIds.includes(trialId))
    return made && (await notebook.wholeTrial(made.trialId))?.plans[0]
  }
  await expect.poll(async () => (await taken())?.question).toBe('How wet should our bread be?')
  expect((await taken())?.formula.ingredients.map(({ name }) => name)).toContain('Milk')

  for (const _ of [1, 2, 3]) if (press('Back').query()) await press('Back').click()
  await press(/^Paste a formula/).click()
  const field = page.getByRole('textbox', { name: /The formula as you have it/ })
  await field.fill('400 g rye flour\n300 g water\n8 g salt')
  await press('Use this formula').click()
  await toProposal(/^Salt/)

  for (const _ of [1, 2, 3]) if (press('Back').query()) await press('Back').click()
  await press(/^From an earlier trial/).click()
  await press(/^Use its plan: (?!How wet should our bread)/).click()
  expect((await notebook.wholeTrial(trialIds[0] ?? ''))?.events).toEqual([])
  await press(/^Look, and use its plan/).click()
  await toProposal(/^Yeast/)
  const events = (await notebook.wholeTrial(trialIds[0] ?? ''))?.events
  expect(events?.map(({ kind }) => kind)).toEqual(['peeked'])
})
