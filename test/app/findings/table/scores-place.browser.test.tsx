import { expect, test, vi } from 'vitest'
import { userEvent } from 'vitest/browser'
import { ScoresPlace } from '@/app/findings/table/scores-place.tsx'
import { notebookWith, openPlace } from '../open-place.tsx'

const slow = { timeout: 20_000 }
vi.setConfig({ testTimeout: 60_000 })

/** Two days, four tasters, three levels, in a spreadsheet's own words: semicolons and decimal commas. */
const rows = ['1', '2'].flatMap((day) =>
  ['AB', 'CD', 'EF', 'GH'].flatMap((who, taster) =>
    ['61,5', '64,5', '70'].map(
      (level, at) =>
        `${day};${who};${level};${4 + ((taster + at + Number(day)) % 3) + (at === 1 ? 2 : 0)}`,
    ),
  ),
)
const table = ['Day;Who;level;liking', ...rows].join('\n')

async function opened(text: string) {
  const { services } = await notebookWith()
  const { screen } = await openPlace(services, <ScoresPlace />)
  await expect.element(screen.getByRole('button', { name: 'Choose a table' })).toBeVisible()
  const input = screen.container.querySelector('input[type=file]')
  if (!input) throw new Error('there is no way to choose a file')
  await userEvent.upload(input, new File([text], 'tasting.csv', { type: 'text/csv' }))
  await expect.element(screen.getByRole('region', { name: 'The first rows' })).toBeVisible()
  return { screen, services }
}

test('columns get their meaning from a list, the choices survive a reload, and the same findings stand over the table', async () => {
  const { screen, services } = await opened(table)
  await expect.element(screen.getByText('How is this to be read?')).toBeVisible()
  await screen.getByRole('button', { name: '“Who” is the taster' }).click()
  await screen.getByLabelText('Meaning of Day').selectOptions('session')
  await screen.getByLabelText('What changed').fill('Water')
  await screen.getByLabelText('Its unit').fill('%')
  await screen.getByLabelText('Control').selectOptions('64.5')
  await screen.getByLabelText('What is better in liking').selectOptions('higher')
  await screen.getByLabelText('Margin of liking').fill('1')
  await expect
    .poll(async () => (await services.notebook.draft('scores'))?.['margin liking'])
    .toBe('1')
  await screen.unmount()

  const again = await openPlace(services, <ScoresPlace />)
  await expect.element(again.screen.getByLabelText('Meaning of Who')).toHaveValue('taster')
  await expect.element(again.screen.getByLabelText('What changed')).toHaveValue('Water')
  await again.screen.getByRole('button', { name: 'Show what it supports' }).click()
  await expect
    .element(again.screen.getByRole('list', { name: 'How far this carries' }), slow)
    .toBeVisible()
  await expect
    .element(again.screen.getByRole('img', { name: /^64.5 %: mean/ }).first(), slow)
    .toBeVisible()
  await again.screen.getByRole('button', { name: /^Which differ/ }).click()
  await expect.element(again.screen.getByText('The wash is your margin.'), slow).toBeVisible()
  expect(again.screen.getByText('What the riders did').elements()).toHaveLength(0)
})

test('every trouble is told at once, by row and column', async () => {
  const { screen } = await opened('session,taster,level,liking\n1,AB,60,x\n1,CD,,5\n1,EF,60,6,7')
  await expect.element(screen.getByText(/^Row 2, column “liking”/)).toBeVisible()
  await expect.element(screen.getByText(/^Row 3, column “level”/)).toBeVisible()
  await expect.element(screen.getByText(/^Row 4: This row has 5 cells/)).toBeVisible()
})

test('a wide table is recognised, and turned into rows when asked', async () => {
  const { screen } = await opened('taster,62 %,65 %,71 %\nAB,5,7,4\nCD,6,8,5\nEF,5,6,6')
  await expect.element(screen.getByText(/one column a level \(62 %, 65 % and 71 %\)/)).toBeVisible()
  await screen.getByRole('button', { name: 'Turn it into rows' }).click()
  await screen.getByLabelText('What is better in Liking').selectOptions('higher')
  await screen.getByRole('button', { name: 'Show what it supports' }).click()
  await expect
    .element(screen.getByRole('list', { name: 'How far this carries' }), slow)
    .toBeVisible()
})

test('a foot row of means is offered to be left out', async () => {
  const { screen } = await opened(
    'taster,level,liking\nAB,60,5\nCD,60,6\nAB,70,7\nCD,70,6\nMean,,6',
  )
  await expect.element(screen.getByText(/“Mean” stands at the foot/)).toBeVisible()
  await screen.getByRole('button', { name: 'Leave it out' }).click()
  await expect.element(screen.getByRole('button', { name: 'Show what it supports' })).toBeVisible()
  await expect.element(screen.getByText(/no direction is claimed/).first()).toBeInTheDocument()
  await screen.getByRole('button', { name: 'Ask again' }).click()
  await expect.element(screen.getByText(/“Mean” stands at the foot/)).toBeVisible()
  expect(screen.getByRole('button', { name: 'Ask again' }).elements()).toHaveLength(0)
})

test('a table too long to come along asks to be chosen once more, and says why', async () => {
  const { services } = await notebookWith()
  await services.notebook.keepDraft('scores', { name: 'long.csv' })
  const { screen } = await openPlace(services, <ScoresPlace />)
  await expect.element(screen.getByText(/long\.csv is longer than this device keeps/)).toBeVisible()
  await expect.element(screen.getByRole('button', { name: 'Choose a table' })).toBeVisible()
})
