import { expect, test } from 'vitest'
import { userEvent } from 'vitest/browser'
import { tastingTrial, tellingOf } from '../../journeys/tasting-trial.ts'
import { atTheTable, kindsIn, openedAt } from './opened.tsx'

const tasting = 'trial/trial-1/tasting'

/** The taster of the tests who has not sealed anything yet sits down. */
async function seated() {
  const opened = await openedAt(tasting, atTheTable())
  await opened.screen.getByRole('button', { name: /not begun/ }).click()
  await opened.screen.getByRole('button', { name: 'I can eat this: begin' }).click()
  return opened
}

test('a ballot with a question still open is not sealed, and says which', async () => {
  const { notebook, screen } = await seated()
  await screen.getByRole('button', { name: 'Liking: 7' }).click()
  await screen.getByRole('button', { name: '1 still to answer' }).click()
  await expect.element(screen.getByText('Some questions are still open, see above.')).toBeVisible()
  await expect
    .element(screen.getByRole('alert'))
    .toHaveTextContent('Give an answer, or say why there is none.')
  expect((await notebook.wholeTrial('trial-1'))?.ballots).toHaveLength(4)
})

test('a question is left out by one press, with a reason of its own, and the ballot goes to its serving', async () => {
  const { notebook, screen } = await seated()
  await screen.getByRole('button', { name: 'Liking: 7' }).click()
  await screen.getByRole('button', { name: 'leave out: chew' }).click()
  await screen.getByRole('button', { name: /^Seal \d{3}$/ }).click()
  await expect.poll(async () => (await notebook.wholeTrial('trial-1'))?.ballots.length).toBe(5)
  const whole = await notebook.wholeTrial('trial-1')
  const own = whole?.ballots.find(({ tasterId }) => tasterId === 'taster-2')
  expect(own?.answers).toEqual([
    { responseId: 'liking', value: 7 },
    { responseId: 'chew', value: null, why: 'no reason given' },
  ])
  const [session] = whole?.sessions ?? []
  expect(session?.dealt.servings.map(({ id }) => id)).toContain(own?.about.id)
})

test('nothing on a taster’s page names a level, letter or weight, and it holds at twice the text', async () => {
  const { screen } = await seated()
  await expect.element(screen.getByRole('heading', { level: 1, name: /^\d{3}$/ })).toBeVisible()
  expect(document.body.innerHTML).not.toMatch(/73\.2|66\.4|level-\d|batch-\d|piece-\d/)
  // Text twice as large: nothing is cut off at the side.
  document.documentElement.style.fontSize = '200%'
  const { scrollWidth, clientWidth } = document.documentElement
  document.documentElement.style.fontSize = ''
  expect(scrollWidth).toBeLessThanOrEqual(clientWidth)
})

test('handed on, the device asks for the next, and the codes wait for the last ballot', async () => {
  const { screen } = await seated()
  await screen.getByRole('button', { name: 'Leave', exact: true }).click()
  await screen.getByRole('button', { name: 'Hand on', exact: true }).click()
  await expect.element(screen.getByText('Who is tasting?')).toBeVisible()
  await expect.element(screen.getByRole('button', { name: 'Unseal the codes' })).toBeDisabled()
})

test('closing early asks for a reason and keeps the codes; unsealing is asked twice and for good', async () => {
  const { notebook, screen } = await openedAt(tasting, atTheTable())
  await screen.getByRole('button', { name: 'Close the tasting early' }).click()
  const close = screen.getByRole('button', { name: 'Close the tasting', exact: true })
  await expect.element(close).toBeDisabled()
  await screen.getByLabelText('Reason').fill('the last train')
  await close.click()
  await expect.element(screen.getByText(/no more ballots are taken/)).toBeVisible()
  expect(await kindsIn(notebook)).not.toContain('unsealed')
  await screen.getByRole('button', { name: 'Unseal the codes' }).click()
  await screen.getByRole('button', { name: 'Keep them sealed' }).click()
  expect(await kindsIn(notebook)).not.toContain('unsealed')
  await screen.getByRole('button', { name: 'Unseal the codes' }).click()
  await screen.getByRole('button', { name: 'Unseal for good' }).click()
  await expect.element(screen.getByText('The codes are open.')).toBeVisible()
  // The tasting is over: the device is free, every way is open again.
  await screen.getByRole('button', { name: 'Place: Tasting' }).click()
  await expect.element(screen.getByRole('link', { name: 'Bench' })).toBeVisible()
})

test('a ballot that comes after the tasting was closed elsewhere is refused, and the page says so', async () => {
  const { notebook, screen } = await seated()
  await screen.getByRole('button', { name: 'Liking: 7' }).click()
  await screen.getByRole('button', { name: /^Chew: 3/ }).click()
  await expect
    .element(screen.getByRole('button', { name: 'Liking: 7', pressed: true }))
    .toBeVisible()
  await notebook.log({
    kind: 'tasting-closed',
    reason: 'closed in another tab',
    trialId: 'trial-1',
    sessionId: 'session-1',
    about: { kind: 'session', id: 'session-1' },
  })
  await expect.element(screen.getByText(/no more ballots are taken/)).toBeVisible()
  expect((await notebook.wholeTrial('trial-1'))?.ballots).toHaveLength(4)
})

test('a sealed ballot is voided by who and why, counts for nothing and is asked again; the first stays', async () => {
  const { notebook, screen } = await openedAt(tasting, atTheTable())
  await screen.getByRole('button', { name: /Changed, voided and late ballots/ }).click()
  const field = screen.getByLabelText('Void a sealed ballot')
  const option = field.element().querySelectorAll('option')[1]
  await field.selectOptions(option?.value ?? '')
  await screen.getByRole('button', { name: 'Void this ballot' }).click()
  await expect.element(screen.getByText('Say why; it stands in the report.')).toBeVisible()
  await screen.getByLabelText('Voided by').fill('BM')
  await screen.getByLabelText('Because').fill('had a cold')
  await screen.getByRole('button', { name: 'Void this ballot' }).click()
  await expect.element(screen.getByText(/voided by BM: had a cold/)).toBeVisible()
  const ballots = (await notebook.wholeTrial('trial-1'))?.ballots ?? []
  const voided = ballots.find(({ change }) => change?.voids)
  expect(ballots.find(({ id }) => id === voided?.replaces)?.answers).toEqual(voided?.answers)
})

test('a baker who tastes blind sees no code beside a letter; their own look at the key is kept and ends their blindness', async () => {
  const tasters = ['club-1', 'club-2'].map((tasterId, at) => ({
    ...{ tasterId, knows: false, baker: at === 0 },
  }))
  const whole = tastingTrial({ tasters, keyKeptBy: 'baker' })
  const codes = whole.sessions[0]?.dealt.servings.map(({ code }) => code) ?? []
  const seen = () => codes.filter((code) => document.body.textContent?.includes(code))
  const { notebook, screen } = await openedAt('trial/trial-1/bench', whole)
  const key = screen.getByText('Which code goes on which piece')
  await expect.element(key).toBeInTheDocument()
  key.element().closest('details')?.setAttribute('open', '')
  const look = screen.getByRole('button', { name: 'I bake and look: I no longer taste blind' })
  await expect.element(look).toBeInTheDocument()
  expect(codes).toHaveLength(4)
  expect(seen()).toEqual([])
  look.element().dispatchEvent(new MouseEvent('click', { bubbles: true }))
  await expect.poll(seen).toEqual(codes)
  expect(await kindsIn(notebook)).toEqual(['peeked'])
  location.hash = `#/${tasting}`
  await expect.element(screen.getByText('awaited, not blind')).toBeVisible()
})

const nameOf = (element: Element | null) =>
  element?.getAttribute('aria-label') ?? element?.textContent ?? ''

const stops = 'a[href], button:enabled, input:enabled, select:enabled, textarea:enabled, summary'

/** Steps on by one key alone, as often as there are stops down the page to what is called so, and finds itself there. */
async function stepTo(name: RegExp) {
  const from = document.activeElement ?? document.body
  const steps = () =>
    [...document.querySelectorAll<HTMLElement>(stops)]
      .filter(
        (each) =>
          each.checkVisibility() &&
          from.compareDocumentPosition(each) & Node.DOCUMENT_POSITION_FOLLOWING,
      )
      .findIndex((each) => name.test(nameOf(each))) + 1
  await expect.poll(steps).toBeGreaterThan(0)
  await userEvent.keyboard('{Tab}'.repeat(steps()))
  expect(nameOf(document.activeElement)).toMatch(name)
}

/** Presses what has focus, once its place takes a press: a key held down must not press what comes after. */
async function enter() {
  await expect.poll(() => document.querySelector('[data-veil]')).toBeNull()
  await userEvent.keyboard('{Enter}')
}

/** The page that comes has the focus, so that the next step goes on from its top. */
const arrived = (title: RegExp) =>
  expect
    .poll(() => document.activeElement?.matches('h1') && nameOf(document.activeElement))
    .toMatch(title)

test('a whole ballot by keyboard alone: one key steps, one presses, and no page loses the focus', async () => {
  const whole = tastingTrial({
    tasters: ['club-1', 'club-2'].map((tasterId) => ({ tasterId, knows: false })),
    levels: [61, 68, 74].map((value, at) => ({
      ...{ id: `level-${at + 1}`, value, label: String(value), control: at === 0 },
    })),
    atTable: { ranking: { ties: true, asks: 'Crispest first, please.' }, asksUsual: true },
    tellApart: { test: 'triangle', levelIds: ['level-1', 'level-3'] },
  })
  const { notebook, screen } = await openedAt(tasting, whole)
  const welcome = screen.getByRole('heading', { name: 'Who is tasting?', exact: true })
  await expect.element(welcome).toBeVisible()
  // A page that another test had open leaves the place where steps go on: they begin here.
  welcome.element().focus()
  await stepTo(/^AN/)
  await enter()
  await arrived(/Before you taste/)
  await stepTo(/begin/)
  await enter()
  const [session] = whole.sessions
  const order = session?.dealt.tasterOrders.find(({ tasterId }) => tasterId === 'club-1')
  const codes = (order?.servingIds ?? []).map(
    (id) => session?.dealt.servings.find((serving) => serving.id === id)?.code ?? '',
  )
  for (const code of codes) {
    await arrived(new RegExp(`^${code}$`))
    await stepTo(/^Liking: 1/)
    await userEvent.keyboard('{ArrowLeft}{ArrowRight}{ArrowRight}{ArrowDown}')
    expect(nameOf(document.activeElement)).toMatch(/^Liking: 4/)
    await enter()
    await stepTo(/^Chew: 2/)
    await enter()
    if (code === codes[0]) {
      await stepTo(/Add words of your own/)
      await enter()
      await expect.poll(() => document.activeElement?.matches('textarea')).toBe(true)
      await userEvent.keyboard('malty')
    }
    await stepTo(/^Seal/)
    await enter()
  }
  await arrived(/In what order/)
  await expect.element(screen.getByText('Crispest first, please.')).toBeVisible()
  // The ranking page tells nothing either: its source, its address and its title.
  const held = [document.documentElement.outerHTML, location.href, document.title].join()
  expect(tellingOf(whole).filter((one) => held.includes(one.replaceAll('"', '')))).toEqual([])
  const rising = codes.toSorted((one, other) => Number(one) - Number(other))
  await stepTo(new RegExp(`^${rising[0]}`))
  await enter()
  await userEvent.keyboard('{ArrowDown}')
  await enter()
  await stepTo(/shares the last place/)
  await enter()
  await userEvent.keyboard('{Shift>}{Tab}{/Shift}')
  await enter()
  await expect
    .element(screen.getByText(`${rising[0]}, ${rising[1]} = ${rising[2]}`, { exact: true }))
    .toBeVisible()
  await stepTo(/Seal this order/)
  await enter()
  const set = session?.dealt.sets.find(({ tasterId }) => tasterId === 'club-1')
  const picked = set?.samples[1]?.code ?? ''
  await arrived(new RegExp(picked))
  await stepTo(new RegExp(`^${picked}`))
  await enter()
  await stepTo(/Seal this answer/)
  await enter()
  await arrived(/usual one/)
  await stepTo(new RegExp(`^${rising[2]}`))
  await enter()
  await stepTo(/Seal this guess/)
  await enter()
  await arrived(/Thank you/)
  await stepTo(/Hand the device on/)
  await enter()
  await expect.element(screen.getByText('Who is tasting?')).toBeVisible()
  // The notebook lists them by id; they were sealed in the order of their counts.
  const ballots = ((await notebook.wholeTrial('trial-1'))?.ballots ?? []).toSorted(
    (one, other) => one.count - other.count,
  )
  expect(ballots.map(({ about }) => about.kind)).toEqual([
    ...codes.map(() => 'serving'),
    ...['ranking', 'set', 'session'],
  ])
  expect(ballots[0]?.words).toBe('malty')
  expect(ballots.find(({ about }) => about.kind === 'ranking')?.ranked).toEqual([
    [rising[0]],
    [rising[1], rising[2]],
  ])
  expect(ballots.find(({ about }) => about.kind === 'set')?.pickedCode).toBe(picked)
})
