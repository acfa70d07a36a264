import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { lostSessions } from '@/core/whole-trial/told-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { lostSessionText } from '@/core/wording/tasting/alone-text.ts'

/** What stands in Findings while nothing was scored or measured, or where nobody can tell the levels any more. */
export function NothingFound({ whole }: { whole: WholeTrial }) {
  const trialId = whole.trial.id
  const lost = lostSessions(whole)
  if (lost.length > 0)
    return (
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
    )
  const begun = whole.sessions.length > 0
  return (
    <EmptyState
      title="Nothing to compare yet"
      action={
        <LinkButton href={`#/trial/${trialId}/${begun ? 'bench' : 'plan'}`} kind="primary">
          {begun ? 'Go to the bench' : 'Finish the plan'}
        </LinkButton>
      }
    >
      Findings need scores or measurements of at least two levels, side by side. Make the doughs,
      taste them blind, and what they show stands here.
    </EmptyState>
  )
}
