import { expect, test } from 'vitest'
import { aloneTrial } from '../../core/tasting/alone-trial.ts'
import { openedAt } from './opened.tsx'

test('alone: three doughs, two goes, three questions and a guess, turned over at the end, in at most 40 presses', async () => {
  let presses = 0
  const count = () => (presses += 1)
  document.addEventListener('click', count)
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
  document.removeEventListener('click', count)
  expect(presses).toBeLessThanOrEqual(40)
  const whole = await notebook.wholeTrial('trial-1')
  const [session] = whole?.sessions ?? []
  const [one] = session?.dealt.tasterOrders[0]?.servingIds ?? []
  const serving = session?.dealt.servings.find(({ id }) => id === one)
  const piece = session?.pieces.find(({ id }) => id === serving?.pieceId)
  expect(session?.dealt.letters.find(({ levelId }) => levelId === piece?.levelId)?.letter).toBe('B')
  expect(whole?.ballots.find(({ about }) => about.kind === 'session')?.guessOf).toBe('most')
})

const levelsOrIds = /66\.4|69\.1|71\.7|level-\d/

test('cups: the bench works by letters and one column of grams, and the tickets say at the end which dough was which', async () => {
  const whole = aloneTrial({ cups: true })
  const { notebook, screen } = await openedAt('trial/trial-1/bench', whole)
  await expect.element(screen.getByText(/waits under the cups/)).toBeVisible()
  expect(screen.getByRole('button', { name: 'I do not taste' }).elements()).toHaveLength(0)
  await screen.getByRole('button', { name: 'Weigh', exact: true }).click()
  await expect.element(screen.getByText(/cup [ABC]: all of it/)).toBeVisible()
  await expect.element(screen.getByText('Water, the same for all').first()).toBeVisible()
  expect(document.querySelector('main')?.innerHTML).not.toMatch(levelsOrIds)
  const [session] = whole.sessions
  if (!session) throw new Error('a session')
  const by = { trialId: 'trial-1', sessionId: session.id, tasterId: 'club-1' }
  for (const id of session.dealt.tasterOrders[0]?.servingIds ?? [])
    await notebook.sealBallot({
      ...by,
      about: { kind: 'serving', id },
      answers: ['liking', 'chew', 'smell'].map((responseId) => ({ responseId, value: 3 })),
    })
  const about = { kind: 'session', id: session.id } as const
  await notebook.sealBallot({ ...by, about, answers: [], guessOf: 'most' })
  location.hash = '#/trial/trial-1/tasting'
  await screen.getByRole('button', { name: 'Turn the tickets over' }).click()
  const tickets = (session.dealt.tickets ?? []).map(({ ticket }) => ticket)
  await screen.getByRole('button', { name: `Dough A: ${tickets[2]}` }).click()
  await screen.getByRole('button', { name: `Dough B: ${tickets[0]}` }).click()
  await screen.getByRole('button', { name: 'Open the codes for good' }).click()
  await expect.element(screen.getByText('The codes are open.')).toBeVisible()
  const after = (await notebook.wholeTrial('trial-1'))?.sessions[0]
  expect(after?.batches.find(({ letter }) => letter === 'A')?.levelId).toBe('level-3')
})

test('lost tickets: the session is ended for a reason that stays, and the findings say what cannot be known', async () => {
  const whole = aloneTrial({ cups: true })
  const { notebook, screen } = await openedAt('trial/trial-1/tasting', whole)
  const sessionId = whole.sessions[0]?.id ?? ''
  await notebook.log({
    ...{ trialId: 'trial-1', sessionId, kind: 'tasting-closed', reason: 'the cups fell over' },
    about: { kind: 'session', id: sessionId },
  })
  await screen.getByRole('button', { name: 'The tickets are lost' }).click()
  await screen.getByRole('button', { name: 'End it for good' }).click()
  await expect
    .element(screen.getByText('Say what happened; it stands in the report.'))
    .toBeVisible()
  await screen.getByLabelText('What happened').fill('wiped off with the bench')
  await screen.getByRole('button', { name: 'End it for good' }).click()
  const said = /Session 1 was ended without anybody knowing .*“wiped off with the bench”/
  await expect.element(screen.getByText(said)).toBeVisible()
  location.hash = '#/trial/trial-1/findings'
  await expect.element(screen.getByText('Nothing can be compared')).toBeVisible()
  await expect.element(screen.getByText(said)).toBeVisible()
})
