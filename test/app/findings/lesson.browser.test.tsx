import axe from 'axe-core'
import { expect, test, vi } from 'vitest'
import { page } from 'vitest/browser'
import { LessonPlace } from '@/app/findings/lesson/lesson-place.tsx'
import focaccia from '../../../trials/focaccia-hydration.json?raw'
import { AtTrial } from '../at-trial.tsx'
import { notebookWith, openPlace } from './open-place.tsx'

const slow = { timeout: 60_000 }
vi.setConfig({ testTimeout: 120_000 })

test('a lesson goes a step at a time, covers the answer until there is a guess and a score for each plate, and survives a reload', async () => {
  await page.viewport(360, 900)
  const { notebook, trialIds, services } = await notebookWith(focaccia)
  const [trialId = ''] = trialIds
  const open = () =>
    openPlace(
      services,
      <AtTrial trialId={trialId}>
        <LessonPlace />
      </AtTrial>,
    )
  const { screen } = await open()
  const press = async (name: string | RegExp) =>
    screen.getByRole('button', { name }).first().click()
  await press('Begin the lesson')
  await expect.element(screen.getByText('1 of 8')).toBeVisible()
  expect((await notebook.settings()).lessons).toEqual([trialId])
  await press('On: Your guess')
  await expect.element(screen.getByRole('button', { name: 'On: At the doughs' })).toBeDisabled()
  await screen.getByRole('radio', { name: '70 %' }).click()
  await press('On: At the doughs')
  await press('On: At the oven')
  await press('On: Taste')
  const onward = screen.getByRole('button', { name: 'On: What was found' })
  for (const letter of ['A', 'B', 'C', 'D']) await press(new RegExp(`^Plate ${letter}.*: 6`))
  await expect.element(onward).toBeDisabled()
  expect(screen.container.textContent).not.toContain('best in between')
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360)
  const { violations } = await axe.run(screen.container)
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([])
  await press(/^Plate E.*: 8/)
  await expect.poll(async () => (await notebook.draft(`lesson/${trialId}`))?.['score/E']).toBe('8')
  await screen.unmount()

  const again = (await open()).screen
  await expect.element(again.getByText('5 of 8')).toBeVisible()
  await again.getByRole('button', { name: 'On: What was found' }).click()
  await expect.element(again.getByText(/^Liking is best in between/).first(), slow).toBeVisible()
  await expect.element(again.getByText(/You guessed that 70.% would come out best/)).toBeVisible()
  await expect.element(again.getByText(/from the best down: E, which was/)).toBeVisible()
  await again.getByRole('button', { name: 'End the lesson' }).click()
  await again.getByRole('button', { name: 'End it' }).click()
  await expect.poll(() => notebook.draft(`lesson/${trialId}`)).toBeUndefined()
  expect((await notebook.settings()).lessons).toEqual([])
})
