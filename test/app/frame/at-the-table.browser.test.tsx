import { expect, test } from 'vitest'
import { atTheTable, kindsIn, openedAt } from '../tasting/opened.tsx'

const tasting = 'trial/trial-1/tasting'
const words = () => document.body.textContent

test('a sealed tasting closes every other way: no link leads away, and a typed address shows nothing of a level', async () => {
  const { screen } = await openedAt(tasting, atTheTable())
  await expect.element(screen.getByText('Who is tasting?')).toBeVisible()
  await expect
    .element(screen.getByRole('button', { name: 'Take the device from the table' }))
    .toBeVisible()
  await expect
    .poll(() =>
      screen
        .getByRole('link')
        .elements()
        .map((link) => link.textContent),
    )
    .toEqual(['Tasting'])
  for (const address of ['', 'kitchen', 'scores', 'about', 'trial/trial-1/bench']) {
    location.hash = `#/${address}`
    await expect
      .element(screen.getByRole('heading', { name: 'This device lies at the table' }))
      .toBeVisible()
    expect(words()).not.toMatch(/73\.2|66\.4/)
    location.hash = `#/${tasting}`
    await expect.element(screen.getByText('Who is tasting?')).toBeVisible()
  }
  expect(document.title).not.toMatch(/73\.2|66\.4/)
})

test('taking the device covered is logged, and what it opens is covered', async () => {
  const { notebook, screen } = await openedAt(tasting, atTheTable())
  await screen.getByRole('button', { name: 'Take the device from the table' }).click()
  await screen.getByRole('button', { name: 'Leave it here' }).click()
  expect(await kindsIn(notebook)).not.toContain('device-taken')
  await screen.getByRole('button', { name: 'Take the device from the table' }).click()
  await screen.getByRole('button', { name: 'Take it, all stays covered' }).click()
  await expect.element(screen.getByText('levels under cover')).toBeVisible()
  const kinds = await kindsIn(notebook)
  expect(kinds.filter((kind) => kind === 'device-taken')).toHaveLength(1)
  expect(kinds.filter((kind) => kind === 'peeked')).toHaveLength(0)
  for (const place of ['plan', 'bench', 'findings', 'report']) {
    location.hash = `#/trial/trial-1/${place}`
    await expect.element(screen.getByText(/^no scores are shown/)).toBeVisible()
    expect(words()).not.toMatch(/73\.2|66\.4/)
  }
})

test('an export under seal says first that the file holds the levels', async () => {
  const { screen } = await openedAt('', atTheTable())
  await screen.getByRole('button', { name: 'More: A trial under cover' }).click()
  await screen.getByRole('button', { name: 'Export: A trial under cover' }).click()
  await expect.element(screen.getByText(/the file holds everything: levels/)).toBeVisible()
  await screen.getByRole('button', { name: 'Not now' }).click()
})

test('a cover is lifted only by a confirmed press, logged once for each sealed session', async () => {
  const { notebook, screen } = await openedAt('trial/trial-1/bench', atTheTable())
  await screen.getByRole('button', { name: 'I bake and do not taste: uncover for me' }).click()
  await screen.getByRole('button', { name: 'Keep it covered' }).click()
  expect(await kindsIn(notebook)).not.toContain('peeked')
  await screen.getByRole('button', { name: 'I bake and do not taste: uncover for me' }).click()
  await screen.getByRole('button', { name: 'Uncover', exact: true }).click()
  await expect.element(screen.getByText(/^Looked behind the codes/)).toBeVisible()
  expect((await kindsIn(notebook)).filter((kind) => kind === 'peeked')).toHaveLength(1)
  // It lasts, so its line is no press.
  expect(screen.getByRole('button', { name: /Looked behind the codes/ }).elements()).toEqual([])
})
