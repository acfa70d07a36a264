import { expect, test, vi } from 'vitest'
import { userEvent } from 'vitest/browser'
import { FindingsPlace } from '@/app/findings/findings-place.tsx'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { type MethodTopic, methodNotes } from '@/core/wording/findings/method-notes.ts'
import focaccia from '../../../trials/focaccia-hydration.json?raw'
import panLoaf from '../../../trials/pan-loaf-salt.json?raw'
import { AtTrial } from '../at-trial.tsx'
import { asChoice } from './choice-trial.ts'
import { notebookWith, openPlace } from './open-place.tsx'

/** The worker's modules are served one by one the first time, beside everything else that runs. */
const slow = { timeout: 60_000 }
vi.setConfig({ testTimeout: 120_000 })

async function opened(...files: Parameters<typeof notebookWith>) {
  const { notebook, trialIds, services } = await notebookWith(...files)
  const [trialId = ''] = trialIds
  return {
    notebook,
    trialId,
    ...(await openPlace(
      services,
      <AtTrial trialId={trialId}>
        <FindingsPlace />
      </AtTrial>,
    )),
  }
}

function withoutFormat(file: string) {
  const { format: _, version: __, ...whole } = JSON.parse(file)
  return whole
}

/** Opens every fold of the page that is shut, those inside others too. */
async function unfold(container: Element) {
  for (let round = 0; round < 2; round += 1) {
    for (const line of container.querySelectorAll<HTMLElement>(
      'h2 > [aria-expanded=false], h3 > [aria-expanded=false]',
    ))
      line.click()
    await new Promise((done) => setTimeout(done, 50))
  }
}

test('the sentence stands first, what to bake beside it, then the picture and how far it carries; all else is a line that says what it found', async () => {
  const { screen, notebook } = await opened(focaccia)
  await expect.element(screen.getByText(/^Liking is best in between/).first(), slow).toBeVisible()
  await expect.element(screen.getByRole('img', { name: /^74 %: mean/ }).first(), slow).toBeVisible()
  await expect.element(screen.getByRole('list', { name: 'How far this carries' })).toBeVisible()
  await expect.element(screen.getByRole('button', { name: 'Adopt 74 %' })).toBeVisible()
  const written = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValueOnce()
  await screen.getByRole('button', { name: 'Copy the answer' }).click()
  await expect.element(screen.getByText(/^Copied: /)).toBeVisible()
  expect(written.mock.lastCall?.[0]).toMatch(
    /^How wet should our focaccia be\?\nLiking is best in between.*\nEasiest that is as good: 74.%\. /,
  )
  written.mockRejectedValueOnce(new Error('not allowed'))
  await screen.getByRole('button', { name: 'Copy the answer' }).click()
  await expect.element(screen.getByLabelText(/^The answer, to be marked/)).toBeVisible()
  written.mockRestore()
  const heads = [...screen.container.querySelectorAll('h2')].map((head) =>
    head.textContent?.replaceAll('\u00a0', ' '),
  )
  expect(heads[0]).toBe('Easiest that is as good')
  for (const [line, result] of [
    ['Carry on', 'You expected the best to lie in between'],
    ['Which differ', '66 and 82 % differ from'],
    ['Which way', 'For each 1'],
    ['Where the best lies', 'The best lies in between'],
    ['As good, and what it costs', '74'],
    ['What the riders did', ''],
    ['Each taster', ''],
    ['Also seen', 'Crispness'],
    ['What it rests on', 'It rests on'],
  ])
    expect(
      heads.some((head) => head?.startsWith(`${line} ${result}`)),
      `${line}: ${heads.join(' | ')}`,
    ).toBe(true)
  expect(screen.getByRole('img', { name: /^66 to 74: \+/ }).elements()).toHaveLength(0)
  await screen.getByRole('button', { name: /^Which differ/ }).click()
  await expect.element(screen.getByRole('img', { name: /^66 to 74: \+/ }), slow).toBeVisible()
  // The one place of the best is said once.
  const sentence = screen.container.querySelector('p')?.textContent ?? ''
  expect(sentence.match(/best in between/g)).toHaveLength(1)
  await expect
    .poll(async () => (await notebook.summaries())[0]?.answer, slow)
    .toMatch(/^Liking is best in between/)
})

test('every chart has the same facts as a table', async () => {
  const { screen } = await opened(focaccia)
  const press = screen.getByRole('button', { name: 'As a table' })
  await expect.element(press.first(), slow).toBeVisible()
  await screen.getByRole('button', { name: /^Which differ/ }).click()
  await press.nth(1).click()
  await expect.element(screen.getByRole('rowheader', { name: '66 → 74 %' })).toBeVisible()
  await press.first().click()
  const row = screen.getByRole('rowheader', { name: '82 %' }).first()
  await expect.element(row).toBeVisible()
  // A level that is pressed on the rail is lit in every table and chart: here its row, its pairs, its column of small charts.
  const level = planInForce(wholeTrialShape.parse(withoutFormat(focaccia))).levels.at(-1)
  const lit = () => [...screen.container.querySelectorAll('[class*="litRow"] > th')]
  expect(lit()).toEqual([])
  useCurrentLevel.setState({ levelId: level?.id ?? '' })
  try {
    await expect.poll(() => lit().map(({ textContent }) => textContent)).toContain('82 %')
    expect(lit().filter(({ textContent }) => textContent?.includes('→'))).toHaveLength(4)
    await press.nth(1).click()
    await expect.poll(() => screen.container.querySelectorAll('[class*="litPair"]').length).toBe(4)
    await screen.getByRole('button', { name: /^Also seen/ }).click()
    await expect
      .poll(() => screen.container.querySelectorAll('[class*="litColumn"]').length, slow)
      .toBeGreaterThan(1)
  } finally {
    useCurrentLevel.setState({ levelId: null })
  }
})

test('a mean says its numbers when it is reached by keyboard', async () => {
  const { screen } = await opened(focaccia)
  const mean = screen.getByRole('img', { name: /^70 %: mean/ }).first()
  await expect.element(mean, slow).toBeVisible()
  const element = mean.element()
  if (!(element instanceof SVGElement)) throw new Error('a mean is a mark of a picture')
  element.focus()
  await expect.element(screen.getByText(/^70 %: mean .* between/).first()).toBeVisible()
})

test('every number has its method and source one press deeper', async () => {
  const { screen } = await opened(focaccia)
  await expect
    .element(screen.getByRole('button', { name: /^What it rests on/ }), slow)
    .toBeVisible()
  await unfold(screen.container)
  await expect
    .element(screen.getByRole('button', { name: 'How the trade-off was worked out' }), slow)
    .toBeVisible()
  const presses = [...screen.container.querySelectorAll('button')].filter(({ textContent }) =>
    /^How .* worked out$/.test(textContent ?? ''),
  )
  for (const each of presses) each.click()
  await expect.element(screen.getByText(/Hurlbert 1984/)).toBeVisible()
  const notes = [...screen.container.querySelectorAll('aside')]
  expect(notes).toHaveLength(presses.length)
  const said = notes.map(({ textContent }) => textContent).join(' ')
  for (const topic of [
    ...['verdict', 'levels', 'means', 'band', 'rungs', 'matter', 'residual', 'pairs'],
    ...['control', 'trend', 'best', 'delta', 'lackOfFit', 'asHandled', 'bootstrap', 'ranks'],
    ...['rankDifference', 'page', 'equivalence', 'easiest', 'handling', 'freshness'],
    ...['agreement', 'correlation'],
  ] as MethodTopic[]) {
    expect(said).toContain(methodNotes[topic].title)
    expect(said).toContain(methodNotes[topic].source)
  }
  for (const figure of [
    /The factor: F \d+\.\d+ with \d+ and \d+ degrees of freedom/,
    /by the delta method between/,
    /Kendall’s W \d/,
    /Page’s L \d/,
    /74\u00a0% against the best other level: [−+]?\d/,
  ])
    expect(said).toMatch(figure)
  await expect.element(screen.getByText(/^For each 1\s% liking changes by/).first()).toBeVisible()
})

test('drawing again shows its progress and ends in an interval with its seed', async () => {
  const { screen } = await opened(focaccia)
  await screen.getByRole('button', { name: /^Where the best lies/ }).click(slow)
  await expect.element(screen.getByRole('button', { name: /^Draw again/ }), slow).toBeVisible()
  await screen.getByRole('button', { name: /^Draw again/ }).click()
  await expect.element(screen.getByText(/drawn again 10,000 times/), slow).toBeVisible()
})

test('drawing again is not offered where it could not answer: why not is said instead', async () => {
  const { screen } = await opened(panLoaf)
  await screen.getByRole('button', { name: /^Where the best lies/ }).click(slow)
  await expect
    .element(screen.getByText(/^There are too few tasters and sessions to draw/).first(), slow)
    .toBeVisible()
  expect(screen.getByRole('button', { name: /^Draw again/ }).elements()).toHaveLength(0)
})

test('narrowing begins a new trial around the best that names the one it follows', async () => {
  const { screen, notebook, trialId, history } = await opened(focaccia)
  await expect.element(screen.getByRole('button', { name: 'Narrow the range' }), slow).toBeVisible()
  await screen.getByRole('button', { name: 'Narrow the range' }).click()
  await expect.poll(() => history.at(-1)).toMatch(/^\/trial\/.+\/plan$/)
  const next = await notebook.wholeTrial(history.at(-1)?.split('/')[2] ?? '')
  if (!next) throw new Error('there is no new trial')
  expect(next.trial.follows).toEqual({ trialId, how: 'narrows' })
  expect(planInForce(next).levels.length).toBeGreaterThan(2)
})

test('the trade-off is folded away, and a weight under the fingers moves it', async () => {
  const { screen } = await opened(focaccia)
  const fold = screen.getByRole('button', { name: /^Trade-off/ })
  await expect.element(fold, slow).toBeVisible()
  expect(screen.getByRole('slider').elements()).toHaveLength(0)
  await fold.click()
  const slider = screen.getByRole('slider', { name: /^Liking/ })
  await expect.element(slider).toBeVisible()
  slider.element().focus()
  await userEvent.keyboard('{ArrowRight}')
  await expect.element(slider).toHaveValue('1.5')
})

test('one session says honestly that it is not settled, and the sides of a just-about-right answer with their cost', async () => {
  const { screen, trialId, history } = await opened(panLoaf)
  await expect
    .element(screen.getByText(/^No difference shows between these pieces/), slow)
    .toBeVisible()
  await expect.element(screen.getByText(/one session cannot speak/).first()).toBeVisible()
  await expect
    .element(screen.getByText(/% just about right, .*\s% too much\./).first())
    .toBeVisible()
  // Another session enters the same answer: the press goes to this trial's plan and begins no trial.
  const again = screen.getByRole('button', { name: 'Bake again' }).first()
  await expect.element(again).toBeVisible()
  await again.click()
  expect(history.at(-1)).toBe(`/trial/${trialId}/plan`)
})

test('any level is adopted with the baker’s reason, and the record says that it was picked', async () => {
  const { screen, notebook } = await opened(panLoaf)
  await screen.getByRole('button', { name: /^Carry on/ }).click(slow)
  await screen.getByRole('button', { name: 'Adopt a level of my choice' }).click()
  await screen.getByRole('combobox', { name: 'Level' }).selectOptions('1.4 %')
  await expect.element(screen.getByText(/1\.4 %, the baker’s own pick/)).toBeVisible()
  await screen.getByRole('textbox', { name: 'Why this one' }).fill('Less salt for my father')
  await screen.getByRole('button', { name: 'Keep it' }).click()
  await expect.poll(async () => (await notebook.houses()).length).toBe(1)
  const [house] = await notebook.houses()
  expect(house?.name).toBe('House dough, 1.4 %')
  expect(house?.revisions[0]?.note).toBe('Less salt for my father')
  expect(house?.revisions[0]?.restsOn[0]?.because).toBe('picked')
})

test('a copy is a press of its own, and begins a trial that names the one it copies', async () => {
  const { screen, notebook, trialId, history } = await opened(panLoaf)
  await screen.getByRole('button', { name: /^Carry on/ }).click(slow)
  await screen.getByRole('button', { name: 'Copy the plan into a new trial' }).click()
  await expect.poll(() => history.at(-1)).toMatch(/^\/trial\/.+\/plan$/)
  const next = await notebook.wholeTrial(history.at(-1)?.split('/')[2] ?? '')
  if (!next) throw new Error('there is no new trial')
  expect(next.trial.follows).toEqual({ trialId, how: 'copies' })
  expect(planInForce(next).question).toMatch(/^Copy: /)
})

test('options without order: no curve, no best, and the levels told apart by place', async () => {
  const { screen } = await opened(asChoice(wholeTrialShape.parse(withoutFormat(focaccia))))
  await expect.element(screen.getByText(/^Liking differs/).first(), slow).toBeVisible()
  await expect
    .element(screen.getByRole('img', { name: /^steel: mean/ }).first(), slow)
    .toBeVisible()
  await expect
    .element(
      screen.getByText('Options without order have no slope and no best in between.').first(),
    )
    .toBeVisible()
  expect(screen.container.querySelectorAll('path[class*="curve"]')).toHaveLength(0)
})
