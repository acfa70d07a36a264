import { expect, test, vi } from 'vitest'
import { FindingsPlace } from '@/app/findings/findings-place.tsx'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { oneEveningTrial } from '../../core/findings/one-evening-trial.ts'
import { AtTrial } from '../at-trial.tsx'
import { notebookWith, openPlace } from './open-place.tsx'

/** The worker's modules are served one by one the first time, beside everything else that runs. */
const slow = { timeout: 60_000 }
vi.setConfig({ testTimeout: 120_000 })

test('one evening alone: the order of liking, the evenings to come, what was seen; no interval, and nothing said of the factor', async () => {
  const { notebook, trialIds, services } = await notebookWith(
    oneEveningTrial({ 52: 5, 56: 8, 60: 6 }),
  )
  const [trialId = ''] = trialIds
  const { screen, history } = await openPlace(
    services,
    <AtTrial trialId={trialId}>
      <FindingsPlace />
    </AtTrial>,
  )
  await expect.element(screen.getByText(/^You liked 56 best, then 60, then 52/), slow).toBeVisible()
  await expect.element(screen.getByRole('heading', { name: 'What you saw' })).toBeVisible()
  await expect.element(screen.getByText(/^none of six pieces/)).toBeVisible()
  const means = screen.getByRole('img', { name: /mean/ })
  await expect.element(means.first(), slow).toBeVisible()
  expect(means.elements().map((mark) => mark.getAttribute('aria-label'))).toEqual([
    '52 %: mean 5.00',
    '56 %: mean 8.00',
    '60 %: mean 6.00',
  ])
  expect(screen.getByRole('list', { name: 'How far this carries' }).elements()).toHaveLength(0)
  await screen.getByRole('button', { name: 'Stop here' }).click()
  await expect.element(screen.getByText(/^Put away, with its order of liking/)).toBeVisible()
  await screen.getByRole('button', { name: 'Take it back' }).click()
  await expect.element(screen.getByRole('button', { name: 'Stop here' })).toBeVisible()
  await screen.getByRole('button', { name: 'Plan two more evenings' }).click()
  await expect.poll(() => history.at(-1)).toMatch(/^\/trial\/.+\/plan$/)
  const next = await notebook.wholeTrial(history.at(-1)?.split('/')[2] ?? '')
  if (!next) throw new Error('there is no new trial')
  expect(next.trial.follows).toEqual({ trialId, how: 'repeats' })
  expect(planInForce(next).plannedSessions).toBe(2)
})
