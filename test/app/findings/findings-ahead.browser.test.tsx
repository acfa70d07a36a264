import { expect, test } from 'vitest'
import { FindingsPlace } from '@/app/findings/findings-place.tsx'
import { responseChart } from '@/app/findings/parts/lazy-charts.ts'
import { prepareFindings } from '@/app/findings/prepare-findings.ts'
import { WholeTrialContext } from '@/app/services/use-whole-trial.ts'
import { findingsAhead } from '@/app/worker/findings-ahead.ts'
import focaccia from '../../../trials/focaccia-hydration.json?raw'
import { notebookWith, openPlace } from './open-place.tsx'

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

test('nothing is worked out ahead of a trial that is sealed, nor of one that would be looked at before its end', async () => {
  const { whole } = await readIn()
  const kept = { ...whole, events: whole.events.filter(({ kind }) => kind !== 'unsealed') }
  const early = {
    ...whole,
    sessions: whole.sessions.map((session) => ({ ...session, plannedSessions: 9 })),
  }
  for (const one of [kept, early]) {
    prepareFindings(one)
    expect(findingsAhead(one)).toBeNull()
  }
})
