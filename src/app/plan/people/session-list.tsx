import { format } from 'date-fns'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import styles from '@/app/kit/taken/taken.module.css'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'

const stands = {
  'not-begun': 'at the bench',
  sealed: 'being tasted, sealed',
  closed: 'tasted, still sealed',
  unsealed: 'done',
} as const

/** The sessions that were begun, and what each stands at. */
export function SessionList() {
  const whole = useWholeTrial()
  if (whole.sessions.length === 0) return null
  return (
    <ol className={styles.read} aria-label="Sessions begun">
      {whole.sessions
        .toSorted((a, b) => a.number - b.number)
        .map((session) => (
          <li key={session.id}>
            <span>
              <b>Session {session.number}</b>, begun {format(session.createdAt, 'd MMM')},{' '}
              {clockTime(session.createdAt, session.zone)},{' '}
              {stands[tastingState(whole, session.id).seal]}
              {session.number > session.plannedSessions ? ', added after the planned ones' : ''}
            </span>
            <LinkButton href={`#/trial/${whole.trial.id}/bench`} size="small">
              Bench
            </LinkButton>
          </li>
        ))}
    </ol>
  )
}
