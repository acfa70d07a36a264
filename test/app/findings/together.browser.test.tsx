import { expect, test } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { TogetherPlace } from '@/app/findings/together/together-place.tsx'
import focaccia from '../../../trials/focaccia-hydration.json?raw'
import { notebookWith, openPlace } from './open-place.tsx'

/** The sample as somebody else made it in their kitchen: another trial; with 3 % of salt where it is salty. */
function elsewhere({ salty }: { salty: boolean }): string {
  const file = JSON.parse(focaccia)
  const text = JSON.stringify(file, (key, value) =>
    salty && key === 'ingredients'
      ? value.map((one: { kind: string }) => (one.kind === 'salt' ? { ...one, percent: 3 } : one))
      : value,
  )
  return text.replaceAll(`"${file.trial.id}"`, '"another-kitchen"')
}

const give = (name: string, text: string) =>
  userEvent.upload(
    document.querySelector('input[type=file][accept*=json]') as HTMLElement,
    new File([text], name, { type: 'application/json' }),
  )

test('a trial of the notebook and one from a file are one answer with one chart; another formula is refused with the difference', async () => {
  const { services, trialIds, notebook } = await notebookWith(focaccia)
  await openPlace(services, <TogetherPlace chosen={trialIds.join(',')} />)
  await expect.element(page.getByText('Choose one more, or add a file.')).toBeVisible()
  await give('salty.json', elsewhere({ salty: true }))
  await expect.element(page.getByText('salt: 3 % of flour against 2.2 %.')).toBeVisible()
  await page.getByRole('button', { name: 'Take away: salty.json' }).click()

  await give('theirs.json', elsewhere({ salty: false }))
  await expect.element(page.getByText(/^Together they show that/)).toBeVisible()
  await expect.element(page.getByText(/The trials are not shown to disagree/)).toBeVisible()
  // 3 sessions × 5 levels of two trials: a dot for each dough.
  await expect.poll(() => document.querySelectorAll('svg circle').length).toBe(30)
  await expect
    .element(
      page
        .getByRole('listitem')
        .filter({ hasText: /3 sessions|three sessions/ })
        .first(),
    )
    .toBeVisible()
  await page.getByRole('button', { name: 'As a table' }).click()
  await expect.element(page.getByRole('table', { name: 'Together, by level' })).toBeVisible()
  expect(await notebook.summaries()).toHaveLength(1)

  await userEvent.upload(
    document.querySelector('input[type=file][accept*=json]') as HTMLElement,
    ['torn.json', 'worn.json'].map((name) => new File(['{'], name, { type: 'application/json' })),
  )
  for (const name of ['torn.json', 'worn.json'])
    await expect.element(page.getByText(`${name} was not read in.`)).toBeVisible()
})

test('a file under seal tells no question that names a level, and no way leads to a trial that is not here', async () => {
  const { services, trialIds } = await notebookWith(focaccia)
  await openPlace(services, <TogetherPlace chosen={trialIds.join(',')} />)
  await expect.element(page.getByText('Choose one more, or add a file.')).toBeVisible()
  const file = JSON.parse(elsewhere({ salty: false }))
  for (const plan of file.plans) plan.question = 'Is 66.4 better than 73.2?'
  file.events = file.events.filter(({ kind }: { kind: string }) => kind !== 'unsealed')
  await give('sealed.json', JSON.stringify(file))
  await expect.element(page.getByText(/A trial under cover \(sealed\.json/)).toBeVisible()
  await expect.element(page.getByText(/It came in a file, where no look/)).toBeVisible()
  expect(document.body.textContent).not.toContain('Is 66.4 better')
  expect(page.getByRole('link', { name: 'Look at its findings first' }).elements()).toHaveLength(0)
})
