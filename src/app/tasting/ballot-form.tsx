import { useEffect, useState } from 'react'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { servingByCode } from '@/core/tasting/blind-view.ts'
import { checkAnswers } from '@/core/tasting/check-ballot.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { tasterQuestions } from '@/core/tasting/taster-questions.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { arriveAt } from './arrive-at.ts'
import { draftAnswers, draftOf, type Question } from './ballot-draft.ts'
import { QuestionEntry } from './question-entry.tsx'
import styles from './tasting.module.css'
import { useTable } from './tasting-context.ts'

interface BallotFormProps {
  tasterId: string
  code: string
  /** "2 of 5". */
  ordinal: string
  questions: readonly Question[]
  /** Sealed, or one that was sealed before left as it is. */
  onDone: () => void
}

/** The ballot of one code. Unfinished answers survive a reload; sealing stores it whole, for good. */
export function BallotForm({ tasterId, code, ordinal, questions, onDone }: BallotFormProps) {
  const { notebook, now } = useServices()
  const { whole, session } = useTable()
  const [tried, setTried] = useState(false)
  const [done, setDone] = useState(false)
  const key = `ballot/${session.id}/${tasterId}/${code}`
  const draft = useDraft({
    load: () => notebook.draft(key),
    save: (values) => notebook.keepDraft(key, values),
    drop: () => notebook.dropDraft(key),
  })
  const { ready, values, setAll } = draft
  const opened = values.startedAt
  const serving = servingByCode(session, code)
  const before = effectiveBallots(whole.ballots, session.id).find(
    (ballot) => ballot.tasterId === tasterId && ballot.about.id === serving?.id,
  )
  useEffect(() => {
    if (ready && !done && opened === undefined)
      setAll({
        ...(before ? draftOf(before.answers, before.startedAt) : { startedAt: String(now()) }),
      })
  }, [ready, done, opened, setAll, now, before])
  if (!ready) return null
  const answers = draftAnswers(questions, values)
  const checked = checkAnswers(answers, tasterQuestions(planOfSession(whole, session)))
  const close = () => {
    setDone(true)
    draft.clear()
    onDone()
  }
  const seal = async () => {
    setTried(true)
    if (!checked.ok || !serving) return
    const about = { kind: 'serving' as const, id: serving.id }
    await notebook.sealBallot({
      trialId: whole.trial.id,
      sessionId: session.id,
      tasterId,
      startedAt: Number(opened ?? now()),
      about,
      answers,
      ...(before ? { replaces: before.id } : {}),
    })
    close()
  }
  const troubles = tried && !checked.ok ? checked.troubles : []
  return (
    <div className={styles.ballot}>
      <p className={styles.code} tabIndex={-1} ref={arriveAt}>
        <span className={styles.quiet}>Code</span> {code}{' '}
        <span className={styles.quiet}>{ordinal}</span>
      </p>
      {before ? (
        <p className={styles.quiet}>Sealed before: what is sealed now takes its place.</p>
      ) : null}
      {questions.map((question) => (
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
