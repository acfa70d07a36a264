import { useEffect, useMemo } from 'react'
import { fetchCharts } from '@/app/findings/parts/lazy-charts.ts'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { mustSayLook } from '@/core/seal/must-say-look.ts'
import { sealed } from '@/core/seal/sealed.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { FindingsPage } from './findings-page.tsx'
import { sourceOfTrial } from './findings-source.ts'
import { LookFirst } from './look-first.tsx'
import { NothingFound } from './nothing-found.tsx'

/** The Findings place of a trial: sealed, nothing yet, a look before the end, or what the data support. */
export function FindingsPlace() {
  const whole = useWholeTrial()
  useEffect(fetchCharts, [])
  return (
    <>
      <PageHeading>Findings</PageHeading>
      {sealed(whole) ? (
        <StillSealed trialId={whole.trial.id} />
      ) : mustSayLook(whole) ? (
        <BeforeTheEnd whole={whole} />
      ) : (
        <FindingsOfTrial whole={whole} />
      )}
    </>
  )
}

function StillSealed({ trialId }: { trialId: string }) {
  return (
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
  )
}

/** A look is asked about only where there is something to see. */
function BeforeTheEnd({ whole }: { whole: WholeTrial }) {
  const scored = useMemo(() => scoresOfTrial(whole, { unsealed: false }), [whole])
  return scored.ok && scored.scores.rows.length > 0 ? (
    <LookFirst whole={whole} />
  ) : (
    <NothingFound whole={whole} />
  )
}

function FindingsOfTrial({ whole }: { whole: WholeTrial }) {
  const source = useMemo(() => sourceOfTrial(whole), [whole])
  const of = useMemo(() => ({ whole }), [whole])
  return <FindingsPage source={source} of={of} nothing={<NothingFound whole={whole} />} />
}
