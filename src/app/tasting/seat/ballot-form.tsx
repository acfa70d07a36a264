import { useEffect, useState } from 'react'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { Button } from '@/app/kit/press/button.tsx'
import type { BlindServing } from '@/core/seal/blind/blind-view.ts'
import { checkAnswers } from '@/core/seal/blind/check-answers.ts'
import { arriveAt } from './arrive-at.ts'
import { draftAnswers, draftOf } from './ballot-draft.ts'
import { QuestionEntry } from './question-entry.tsx'
import type { Seat } from './seat.ts'
import styles from './tasting.module.css'

interface BallotFormProps {
  seat: Seat
  serving: BlindServing
  /** Sealed, or one that was sealed before left as it is. */
  onDone: () => void
}

/** The ballot of one code. Unfinished answers survive a reload; sealing stores it whole, for good. */
export function BallotForm({ seat, serving, onDone }: BallotFormProps) {
  const { view, now } = seat
  const { code, position, sealed: before } = serving
  const [tried, setTried] = useState(false)
  const [done, setDone] = useState(false)
  const draft = useDraft(seat.draftOf(code))
  const { ready, values, setAll } = draft
  const opened = values.startedAt
  useEffect(() => {
    if (ready && !done && opened === undefined)
      setAll({
        ...(before ? draftOf(before.answers, before.startedAt) : { startedAt: String(now()) }),
      })
  }, [ready, done, opened, setAll, now, before])
  if (!ready) return null
  const answers = draftAnswers(view.questions, values)
  const checked = checkAnswers(answers, view.questions)
  const close = () => {
    setDone(true)
    draft.clear()
    onDone()
  }
  const seal = async () => {
    setTried(true)
    if (!checked.ok) return
    await seat.sealBallot(code, answers, Number(opened ?? now()))
    close()
  }
  const troubles = tried && !checked.ok ? checked.troubles : []
  return (
    <div className={styles.ballot}>
      <p className={styles.code} tabIndex={-1} ref={arriveAt}>
        <span className={styles.quiet}>Code</span> {code}{' '}
        <span className={styles.quiet}>
          {position} of {view.servings.length}
        </span>
      </p>
      {before ? (
        <p className={styles.quiet}>Sealed before: what is sealed now takes its place.</p>
      ) : null}
      {view.questions.map((question) => (
        <QuestionEntry
          key={question.responseId}
          question={question}
          draft={draft}
          trouble={troubles.find((each) => each.responseId === question.responseId)}
        />
      ))}
      <p role="status" className={styles.quiet}>
        {troubles.length > 0 ? 'Some questions are still open, see above.' : ''}
      </p>
      <Button kind="primary" size="bench" onPress={seal}>
        Seal {code}
        {before ? ' anew' : ''}
      </Button>
      {before ? <Button onPress={close}>Leave it as it is</Button> : null}
    </div>
  )
}
