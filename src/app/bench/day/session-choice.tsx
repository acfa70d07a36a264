import styles from '@/app/bench/bench.module.css'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import type { Session } from '@/core/session/session-record.ts'
import { dateText } from '@/core/wording/words/date-text.ts'

interface SessionChoiceProps {
  sessions: readonly Session[]
  session: Session
  onPick: (sessionId: string) => void
}

/** Which session is on the bench; with only one, which it is. */
export function SessionChoice({ sessions, session, onPick }: SessionChoiceProps) {
  if (sessions.length < 2)
    return (
      <p className={styles.quiet}>
        Session {session.number} of {session.plannedSessions}
      </p>
    )
  return (
    <SelectField
      label="Session"
      value={session.id}
      options={sessions.map((each) => ({
        value: each.id,
        label: `${each.number}, begun ${dateText(each.createdAt, each.zone)}`,
      }))}
      onValue={onPick}
    />
  )
}
