import { SelectField } from '@/app/kit/field/select-field.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import type { Session } from '@/core/session/session-record.ts'
import type { TasterState } from '@/core/tasting/tasting-state.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { useTable } from './tasting-context.ts'

interface WelcomeProps {
  sessions: readonly Session[]
  onSession: (sessionId: string) => void
  onSit: (tasterId: string) => Promise<void>
}

/** The device between two tasters: pick your initials, then the codes come in your own order. */
export function Welcome({ sessions, onSession, onSit }: WelcomeProps) {
  const { whole, session, state } = useTable()
  const seats = state.tasters.filter(({ presence }) => presence !== 'declined')
  const asks = state.seal === 'not-begun' || state.seal === 'sealed'
  return (
    <section className={styles.stack}>
      <PageHeading>{asks ? 'Who is tasting?' : 'Tasting'}</PageHeading>
      {state.seal === 'unsealed' ? null : state.seal === 'closed' ? (
        <p className={styles.lead}>The tasting is closed: no more ballots are taken.</p>
      ) : seats.length === 0 ? (
        <p className={styles.lead}>Nobody is at the table. Add tasters on the Plan page first.</p>
      ) : (
        <div className={styles.seats}>
          {seats.map((taster) => (
            <Button
              key={taster.tasterId}
              size="bench"
              disabled={taster.presence === 'left'}
              onPress={() => onSit(taster.tasterId)}
            >
              <span className={styles.seat}>
                <b>{tasterName(taster.tasterId, whole.kitchen)}</b>
                <span className={styles.quiet}>{progressText(taster)}</span>
              </span>
            </Button>
          ))}
        </div>
      )}
      {sessions.length > 1 ? (
        <SelectField
          label="Session"
          value={session.id}
          options={sessions.map(({ id, number }) => ({ value: id, label: `Session ${number}` }))}
          onValue={onSession}
        />
      ) : null}
    </section>
  )
}

function progressText(taster: TasterState): string {
  if (taster.presence === 'left') return 'has left'
  if (taster.answered === 0) return 'not begun'
  return taster.complete ? 'all sealed' : `${taster.answered} of ${taster.expected} sealed`
}
