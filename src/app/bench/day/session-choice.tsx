import { useEffect, useState } from 'react'
import { createPortal } from 'react-dom'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import type { Session } from '@/core/session/session-record.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'
import { dateText } from '@/core/wording/words/date-text.ts'
import styles from './session-choice.module.css'

interface SessionChoiceProps {
  /** What the trial asks, or, while the codes are kept, words that name no level. */
  question: string
  sessions: readonly Session[]
  session: Session
  onPick: (sessionId: string) => void
}

/** Which session is on the bench and what time it is, in the page's one line of head; of several sessions a press chooses. */
export function SessionChoice({ question, sessions, session, onPick }: SessionChoiceProps) {
  const time = useShownOfClock(useServices().now, (now) => clockTime(now, session.zone))
  const [head, setHead] = useState<HTMLElement | null>(null)
  useEffect(() => setHead(document.getElementById('head-words')), [])
  const words = (
    <p className={styles.line}>
      <b className={styles.question}>{question}</b>
      {sessions.length < 2 ? (
        <span>Session {session.number}</span>
      ) : (
        <select
          className={styles.choice}
          aria-label="Session"
          value={session.id}
          onChange={(change) => onPick(change.target.value)}
        >
          {sessions.map((each) => (
            <option key={each.id} value={each.id}>
              Session {each.number}, begun {dateText(each.createdAt, each.zone)}
            </option>
          ))}
        </select>
      )}
      <span className={styles.time}>{time}</span>
    </p>
  )
  return head ? createPortal(words, head) : words
}
