import { useLiveQuery } from 'dexie-react-hooks'
import { useState } from 'react'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { useUncoveredTrial } from '@/app/kit/page/uncovered-trial.ts'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { trialCover } from '@/core/seal/trial-cover.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import styles from './bench.module.css'
import { BenchSession } from './bench-session.tsx'
import { SessionChoice } from './day/session-choice.tsx'

/** The working day: what to do next for which dough, and everything that happens logged at a press. */
export function BenchPlace() {
  const { notebook } = useServices()
  const whole = useWholeTrial()
  const settings = useLiveQuery(() => notebook.settings(), [notebook])
  const uncovered = useUncoveredTrial()
  const [pickedId, setPickedId] = useState<string | null>(null)
  if (!settings) return <Progress label="Opening the bench" done={null} />

  const sessions = whole.sessions.toSorted((a, b) => a.number - b.number)
  const session = sessions.find((each) => each.id === pickedId) ?? sessions.at(-1)
  const cover = trialCover(planInForce(whole), whole, 'bench', uncovered.trialId === whole.trial.id)
  return (
    <div className={styles.bench}>
      <div className={styles.unseen}>
        <PageHeading>Bench</PageHeading>
      </div>
      {session ? (
        <>
          <SessionChoice
            question={cover.title}
            sessions={sessions}
            session={session}
            onPick={setPickedId}
          />
          <BenchSession key={session.id} whole={whole} session={session} device={settings.device} />
        </>
      ) : (
        <EmptyState
          title="No session has begun"
          action={
            <LinkButton href={`#/trial/${whole.trial.id}/plan`} kind="primary">
              Go to the plan
            </LinkButton>
          }
        >
          The bench shows the working day once the doughs are dealt: begin the session on the plan.
        </EmptyState>
      )}
    </div>
  )
}
