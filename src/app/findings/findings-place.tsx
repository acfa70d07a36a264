import { useEffect, useMemo } from 'react'
import { fetchCharts } from '@/app/findings/parts/lazy-charts.ts'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { mustSayLook } from '@/core/seal/must-say-look.ts'
import { lostSessions } from '@/core/whole-trial/told-trial.ts'
import { lostSessionText } from '@/core/wording/tasting/alone-text.ts'
import { FindingsPage } from './findings-page.tsx'
import { sourceOfTrial } from './findings-source.ts'
import { LookFirst } from './look-first.tsx'

/** The Findings place of a trial: sealed, nothing yet, a look before the end, or what the data support. */
export function FindingsPlace() {
  const whole = useWholeTrial()
  const trialId = whole.trial.id
  const scored = useMemo(() => scoresOfTrial(whole, { unsealed: false }), [whole])
  const source = useMemo(() => (scored.ok ? sourceOfTrial(whole) : null), [whole, scored])
  useEffect(fetchCharts, [])
  if (!scored.ok || !source)
    return (
      <>
        <PageHeading>Findings</PageHeading>
        <EmptyState
          title="Still sealed"
          action={
            <LinkButton href={`#/trial/${trialId}/tasting`} kind="primary">
              Go to the tasting
            </LinkButton>
          }
        >
          The answer opens when the last ballot is in, so that nobody scores what they hope for.
        </EmptyState>
      </>
    )
  const lost = lostSessions(whole)
  if (scored.scores.rows.length === 0 && lost.length > 0)
    return (
      <>
        <PageHeading>Findings</PageHeading>
        <EmptyState
          title="Nothing can be compared"
          action={
            <LinkButton href={`#/trial/${trialId}/plan`} kind="primary">
              To the plan, for another session
            </LinkButton>
          }
        >
          {lost.map(lostSessionText).join(' ')}
        </EmptyState>
      </>
    )
  if (scored.scores.rows.length === 0)
    return (
      <>
        <PageHeading>Findings</PageHeading>
        <EmptyState
          title="Nothing to compare yet"
          action={
            <LinkButton
              href={`#/trial/${trialId}/${whole.sessions.length === 0 ? 'plan' : 'bench'}`}
              kind="primary"
            >
              {whole.sessions.length === 0 ? 'Finish the plan' : 'Go to the bench'}
            </LinkButton>
          }
        >
          Findings need scores or measurements of at least two levels, side by side. Make the
          doughs, taste them blind, and what they show stands here.
        </EmptyState>
      </>
    )
  return (
    <>
      <PageHeading>Findings</PageHeading>
      {mustSayLook(whole) ? (
        <LookFirst whole={whole} />
      ) : (
        <FindingsPage source={source} scores={scored.scores} />
      )}
    </>
  )
}
