import { useState } from 'react'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import styles from '@/app/tasting/seat/tasting.module.css'
import { sealOf } from '@/core/seal/sealed.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { toTurn } from '@/core/tasting/to-turn.ts'
import { onShuffledPlates } from '@/core/trial/served-at-table.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { TurnOver } from './alone/turn-over.tsx'
import { BakersDesk } from './bakers-desk.tsx'
import { ChangedBallots } from './changed-ballots.tsx'
import { NeverBaked } from './never-baked.tsx'
import { PaperEntry } from './paper/paper-entry.tsx'
import { SeatOfTaster } from './seat-of-taster.tsx'
import { ServedList } from './served-list.tsx'
import { type Table, TableContext } from './tasting-context.ts'
import { useLayDevice } from './use-lay-device.ts'
import { useSeat } from './use-seat.ts'
import { Welcome } from './welcome.tsx'
import { WhichWasWhich } from './which-was-which.tsx'

/**
 * Blind scoring on one device that is handed round. Whoever is at the table sees codes and questions; nothing on this page
 * knows a level, letter or weight before unsealing, and no step of it makes an address of its own.
 */
export function TastingPlace() {
  const whole = useWholeTrial()
  const [sessionId, setSessionId] = useState<string | null>(null)
  const trialId = whole.trial.id
  const sessions = whole.sessions.toSorted((a, b) => a.number - b.number)
  const session = sessions.find((each) => each.id === sessionId) ?? sessions.at(-1)
  const seal = session && sealOf(whole, session.id)
  const { tasterId, sit, rise } = useSeat(trialId)
  useLayDevice(trialId, seal, typeof tasterId === 'string')
  if (!session) return <NothingToTaste trialId={trialId} />
  if (tasterId === undefined) return null
  const table: Table = { whole, session, state: tastingState(whole, session.id) }
  const sitting = table.state.seal === 'not-begun' || table.state.seal === 'sealed'
  const wanted = table.state.seal === 'closed' ? toTurn(whole, session.id) : null
  const plates = onShuffledPlates(planOfSession(whole, session))
  const here = new Set(table.state.tasters.map((taster) => taster.tasterId))
  return (
    <TableContext value={table}>
      <div className={styles.tasting}>
        {wanted ? (
          <ErrorBoundary what="what is turned over" of={whole}>
            <TurnOver wanted={wanted} />
          </ErrorBoundary>
        ) : tasterId === null || !sitting || !here.has(tasterId) ? (
          <>
            <ErrorBoundary what="the seats at the table" of={whole}>
              <NeverBaked>
                <Welcome onSit={sit} sessions={sessions} onSession={setSessionId} />
              </NeverBaked>
            </ErrorBoundary>
            {table.state.seal === 'unsealed' ? (
              <>
                <ErrorBoundary what="which was which" of={whole}>
                  <WhichWasWhich />
                </ErrorBoundary>
                <ErrorBoundary what="what came late" of={whole}>
                  {plates ? null : <PaperEntry />}
                  {plates ? null : <ChangedBallots />}
                </ErrorBoundary>
              </>
            ) : (
              <>
                <ErrorBoundary what="what goes to the table" of={whole}>
                  <ServedList />
                </ErrorBoundary>
                <ErrorBoundary what="the seal" of={whole}>
                  <BakersDesk />
                </ErrorBoundary>
              </>
            )}
          </>
        ) : (
          <ErrorBoundary what="the ballot" of={whole}>
            <SeatOfTaster key={tasterId} tasterId={tasterId} onRise={rise} />
          </ErrorBoundary>
        )}
      </div>
    </TableContext>
  )
}

function NothingToTaste({ trialId }: { trialId: string }) {
  return (
    <div className={styles.tasting}>
      <PageHeading>Tasting</PageHeading>
      <EmptyState
        title="Nothing to taste yet"
        action={
          <LinkButton href={`#/trial/${trialId}/plan`} kind="primary">
            Go to the plan
          </LinkButton>
        }
      >
        Serving codes are dealt when a session begins. Begin one on the plan, bake, then come back
        here.
      </EmptyState>
    </div>
  )
}
