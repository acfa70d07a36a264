import type { ReactNode } from 'react'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { page } from 'vitest/browser'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { BenchPlace } from '@/app/bench/bench-place.tsx'
import { FindingsPlace } from '@/app/findings/findings-place.tsx'
import { HomePlace } from '@/app/home/home-place.tsx'
import { KitchenPlace } from '@/app/kitchen/kitchen-place.tsx'
import { PlanPlace } from '@/app/plan/plan-place.tsx'
import { ReportPlace } from '@/app/report/report-place.tsx'
import { TastingPlace } from '@/app/tasting/tasting-place.tsx'
import finished from '../../trials/focaccia-hydration.json?raw'
import { sessionOf } from '../trial-of/session-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { AtTrial } from './at-trial.tsx'
import { notebookWith, openPlace } from './findings/open-place.tsx'
import { openParts } from './plan/open-parts.ts'

/** One part of each place fails when it is drawn, for as long as it is planted. */
const planted = vi.hoisted(() => ({ stands: true }))
const failing = vi.hoisted(() => (name: string) => async (actual: () => Promise<object>) => ({
  ...(await actual()),
  [name]: () => {
    if (planted.stands) throw new Error(`planted in ${name}`)
    return `${name} stands`
  },
}))
vi.mock('@/app/plan/panels/weigh-sheet-panel.tsx', failing('WeighSheetPanel'))
vi.mock('@/app/bench/day/coming-up.tsx', failing('ComingUp'))
vi.mock('@/app/tasting/served-list.tsx', failing('ServedList'))
vi.mock('@/app/findings/parts/ladder.tsx', failing('Ladder'))
vi.mock('@/app/report/downloads.tsx', failing('Downloads'))
vi.mock('@/app/home/sample-shelf.tsx', failing('SampleShelf'))
vi.mock('@/app/kitchen/figures-setting.tsx', failing('FiguresSetting'))

const say = console.error
beforeEach(() => {
  planted.stands = true
  // React tells of every planted failure.
  console.error = () => {}
})
afterEach(() => {
  console.error = say
})

const failure = (what: string) => page.getByText(`Something went wrong in ${what}.`)

async function open(place: ReactNode, ...files: Parameters<typeof notebookWith>) {
  const { services, trialIds, notebook } = await notebookWith(...files)
  const [trialId] = trialIds
  await openPlace(services, trialId ? <AtTrial trialId={trialId}>{place}</AtTrial> : place)
  return { notebook, trialId }
}

const freshDay = () => ({
  ...wholeTrialOf(),
  sessions: [sessionOf()],
  ...{ events: [], ballots: [], photos: [] },
})

test('Plan: the form stays, and what it mends is tried again by itself', async () => {
  await open(<PlanPlace />, freshDay())
  await openParts()
  await expect.element(failure('the part “Weigh sheet”')).toBeVisible()
  planted.stands = false
  await page.getByRole('textbox', { name: 'Question' }).fill('Is it mended by a key?')
  await expect.element(page.getByText('WeighSheetPanel stands')).toBeVisible()
})

test('Bench: the step in front is begun while what comes next has failed', async () => {
  const { notebook, trialId } = await open(<BenchPlace />, freshDay())
  await expect.element(failure('what comes next')).toBeVisible()
  await page.getByRole('button', { name: 'Begin', exact: true }).click()
  await expect
    .poll(async () => (await notebook.wholeTrial(trialId ?? ''))?.events.length)
    .toBeGreaterThan(0)
})

test('Tasting: a taster can still sit down', async () => {
  await open(<TastingPlace />, freshDay())
  await expect.element(failure('what goes to the table')).toBeVisible()
  await expect.element(page.getByText('Who is tasting?')).toBeVisible()
})

test('Findings: everything beside the failed part is said', async () => {
  await open(<FindingsPlace />, finished)
  await expect.element(failure('how far this carries')).toBeVisible()
  await expect.element(page.getByRole('heading', { name: /^Which differ/ })).toBeVisible()
})

test('Report: the document stands without its downloads', async () => {
  await open(<ReportPlace />, finished)
  await expect.element(failure('the downloads')).toBeVisible()
  await expect.element(page.getByRole('article')).toBeVisible()
})

test('Home: the trials stand without the samples', async () => {
  const { services } = await notebookWith(freshDay())
  await openPlace(services, <HomePlace />)
  await expect.element(failure('the sample trials')).toBeVisible()
  await expect.element(page.getByRole('list', { name: 'Trials' })).toBeVisible()
  await expect.element(page.getByRole('button', { name: 'New trial' })).toBeVisible()
})

test('Kitchen: its chapters stand without how figures are written', async () => {
  const { services } = await notebookWith(freshDay())
  await openPlace(services, <KitchenPlace />)
  await expect.element(failure('how figures are written')).toBeVisible()
  await expect.element(page.getByRole('heading', { name: 'Scales' })).toBeVisible()
})
