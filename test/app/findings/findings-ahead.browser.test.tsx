import { afterEach, expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-react'
import { FindingsPlace } from '@/app/findings/findings-place.tsx'
import { responseChart } from '@/app/findings/parts/lazy-charts.ts'
import { prepareFindings } from '@/app/findings/prepare-findings.ts'
import { placeNamed } from '@/app/frame/places.tsx'
import { useFindingsAhead } from '@/app/frame/use-findings-ahead.ts'
import { WholeTrialContext } from '@/app/services/use-whole-trial.ts'
import { findingsAhead } from '@/app/worker/findings-ahead.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import focaccia from '../../../trials/focaccia-hydration.json?raw'
import { notebookWith, openPlace } from './open-place.tsx'

afterEach(() => vi.unstubAllGlobals())

/** The names of the workers that are started from here on. */
function startedWorkers(): string[] {
  const names: string[] = []
  const Real = window.Worker
  vi.stubGlobal(
    'Worker',
    class extends Real {
      constructor(url: string | URL, options: WorkerOptions) {
        super(url, options)
        names.push(options.name ?? '')
      }
    },
  )
  return names
}

function AtFindings({ whole, shown }: { whole: WholeTrial; shown: boolean }) {
  useFindingsAhead(whole, 'findings')
  return <WholeTrialContext value={whole}>{shown ? <FindingsPlace /> : null}</WholeTrialContext>
}

async function readIn() {
  const { notebook, trialIds, services } = await notebookWith(focaccia)
  const whole = await notebook.wholeTrial(trialIds[0] ?? '')
  if (!whole) throw new Error('the sample was read in')
  return { whole, services }
}

test('what was made ready while another place was read stands at once: no word of waiting, sentence, picture and how far it carries', async () => {
  const { whole, services } = await readIn()
  prepareFindings(whole)
  await Promise.all([findingsAhead(whole)?.coming, responseChart.fetch()])
  const { screen } = await openPlace(
    services,
    <WholeTrialContext value={whole}>
      <FindingsPlace />
    </WholeTrialContext>,
  )
  const page = screen.container
  expect(page.textContent).toMatch(/Liking is best in between/)
  expect(page.textContent).not.toMatch(/Working out/)
  expect(page.querySelector('[aria-label="How far this carries"]')).not.toBeNull()
  expect(page.querySelectorAll('g[role="img"]').length).toBeGreaterThanOrEqual(5)
})

test('at Findings itself one worker finds, and none is started beside it', async () => {
  const { whole, services } = await readIn()
  await placeNamed('findings').fetch()
  const started = startedWorkers()
  const { screen } = await openPlace(services, <AtFindings whole={whole} shown />)
  await expect.element(screen.getByText(/Liking is best in between/).first()).toBeVisible()
  expect(started.filter((name) => name === 'findings')).toHaveLength(1)
})

test('nothing is worked out ahead of a trial that is sealed, nor of one that would be looked at before its end', async () => {
  const { whole } = await readIn()
  const started = startedWorkers()
  const kept = { ...whole, events: whole.events.filter(({ kind }) => kind !== 'unsealed') }
  const early = {
    ...whole,
    sessions: whole.sessions.map((session) => ({ ...session, plannedSessions: 9 })),
  }
  for (const one of [kept, early]) {
    prepareFindings(one)
    await render(<AtFindings whole={one} shown={false} />)
    expect(findingsAhead(one)).toBeNull()
  }
  expect(started).toEqual([])
})
