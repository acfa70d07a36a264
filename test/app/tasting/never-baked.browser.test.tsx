import { expect, test } from 'vitest'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import { openedAt } from './opened.tsx'

test('before the first taster sits down, pieces the log never had in the oven are said by their codes and no seat is offered; one press answers it, is kept, and the tasting opens', async () => {
  const whole = wholeTrialOf()
  const [session] = whole.sessions
  const events = whole.events.filter(({ count }) => count <= 22)
  const { notebook, screen } = await openedAt('trial/trial-1/tasting', {
    ...whole,
    events,
    ballots: [],
  })
  await expect.element(screen.getByText('Before the first taster sits down')).toBeVisible()
  await expect
    .element(screen.getByRole('heading', { level: 1, name: 'Tasting', exact: true }))
    .toBeVisible()
  // The log had one piece in the oven: all other servings are named.
  const baked = events.flatMap(({ kind, about }) => (kind === 'bake-in' ? [about.id] : []))
  const codes = (session?.dealt.servings ?? [])
    .flatMap(({ pieceId, code }) => (baked.includes(pieceId) ? [] : [code]))
    .toSorted()
  expect(baked).toHaveLength(1)
  for (const code of codes)
    await expect
      .element(screen.getByText(/^By the log .* never in the oven/))
      .toHaveTextContent(code)
  const seats = screen.getByRole('button', { name: /^(RV|OK)\b/ })
  expect(seats.elements()).toHaveLength(0)
  await screen.getByRole('button', { name: 'Taste all the same', exact: true }).click()
  await expect
    .element(screen.getByRole('heading', { level: 1, name: 'Who is tasting?', exact: true }))
    .toBeVisible()
  const after = (await notebook.wholeTrial('trial-1'))?.events ?? []
  expect(after).toHaveLength(events.length + 1)
  expect(after.filter(({ kind }) => kind === 'day-closed')).toHaveLength(1)
  expect(seats.elements()).not.toHaveLength(0)
})
