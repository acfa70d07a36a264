import { expect, test } from 'vitest'
import { aloneTrial } from '../../core/tasting/alone-trial.ts'
import { openedAt } from './opened.tsx'

test('alone: three doughs, two goes, three questions and a guess, turned over at the end, in at most 40 presses', async () => {
  let presses = 0
  document.addEventListener('click', () => (presses += 1))
  const { notebook, screen } = await openedAt('trial/trial-1/tasting', aloneTrial())
  const press = async (name: string | RegExp) => {
    const button = screen.getByRole('button', { name, exact: typeof name === 'string' })
    await expect.element(button).toBeEnabled()
    button.element().dispatchEvent(new MouseEvent('click', { bubbles: true }))
  }
  await press(/not begun/)
  await press('I can eat this: begin')
  for (const round of [1, 2]) {
    await expect.element(screen.getByText(`round ${round} of 2`)).toBeVisible()
    await press('I have lost track')
    for (const plate of [1, 2, 3]) {
      await expect
        .element(screen.getByRole('heading', { level: 1, name: `Plate ${plate}` }))
        .toBeVisible()
      await press(`Liking: ${4 + plate}`)
      await press(/^Chew: 3/)
      await press(/^Smell: 5/)
      if (round === 1 && plate === 1)
        expect(document.body.innerHTML).not.toMatch(/66\.4|69\.1|71\.7|level-\d|batch-|piece-/)
      await press(`Seal plate ${plate}`)
    }
  }
  await expect.element(screen.getByText(/Which was the wettest dough/)).toBeVisible()
  await press('Plate 3')
  await press('Seal this guess')
  await press('Turn the plates over')
  await press('Round 1, plate 1: B')
  // A letter that was said of another plate moves: one press mends a slip.
  await press('Round 1, plate 2: A')
  await press('Round 2, plate 1: C')
  await press('Round 2, plate 3: A')
  await expect
    .element(screen.getByRole('button', { name: 'Round 2, plate 2: B', pressed: true }))
    .toBeVisible()
  await press('Open the codes for good')
  await expect.element(screen.getByText('The codes are open.')).toBeVisible()
  expect(presses).toBeLessThanOrEqual(40)
  const whole = await notebook.wholeTrial('trial-1')
  const [session] = whole?.sessions ?? []
  const [one] = session?.dealt.tasterOrders[0]?.servingIds ?? []
  const serving = session?.dealt.servings.find(({ id }) => id === one)
  const piece = session?.pieces.find(({ id }) => id === serving?.pieceId)
  expect(session?.dealt.letters.find(({ levelId }) => levelId === piece?.levelId)?.letter).toBe('B')
  expect(whole?.ballots.find(({ about }) => about.kind === 'session')?.guessOf).toBe('most')
})
