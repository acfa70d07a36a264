import { useState } from 'react'
import { useLocation } from 'wouter'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { lessonParts } from '@/core/lesson/lesson.ts'
import { mustSayLook } from '@/core/seal/must-say-look.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import {
  lessonCaution,
  lessonOffer,
  lessonTitles,
  lookFor,
} from '@/core/wording/lesson/lesson-text.ts'
import styles from './lesson.module.css'
import { LessonMatter } from './lesson-matter.tsx'
import { useLesson } from './use-lesson.ts'

/** A finished trial as a lesson: a step at a time, what to look for, the answer covered until the learner has guessed and tasted. */
export function LessonPlace() {
  const whole = useWholeTrial()
  const scored = scoresOfTrial(whole, { unsealed: false })
  if (!scored.ok || scored.scores.rows.length === 0 || mustSayLook(whole))
    return (
      <>
        <PageHeading>Lesson</PageHeading>
        <EmptyState
          title="No answer to learn from yet"
          action={
            <LinkButton href={`#/trial/${whole.trial.id}/plan`} kind="primary">
              Back to the trial
            </LinkButton>
          }
        >
          A lesson is made of a finished trial: all sessions tasted, and the codes unsealed.
        </EmptyState>
      </>
    )
  return <LessonPages />
}

function LessonPages() {
  const whole = useWholeTrial()
  const plan = planInForce(whole)
  const lesson = useLesson(whole.trial.id, plan)
  if (!lesson.ready) return <Progress label="Opening the lesson" done={null} />
  if (!lesson.begun)
    return (
      <>
        <PageHeading>Lesson</PageHeading>
        <div className={styles.page}>
          <p className={styles.lead}>{lessonOffer}</p>
          <Notice kind="caution" title="Before you begin">
            {lessonCaution}
          </Notice>
          <div className={styles.presses}>
            <Button kind="primary" onPress={lesson.begin}>
              Begin the lesson
            </Button>
          </div>
        </div>
      </>
    )
  const at = lessonParts.indexOf(lesson.part)
  const [before, after] = [lessonParts[at - 1], lessonParts[at + 1]]
  return (
    <>
      <PageHeading>Lesson</PageHeading>
      <div className={styles.page}>
        <p className={styles.count}>
          {at + 1} of {lessonParts.length}
        </p>
        <h2 className={styles.title}>{lessonTitles[lesson.part]}</h2>
        <LessonMatter whole={whole} plan={plan} lesson={lesson} />
        <section className={styles.look} aria-label="What to look for">
          <h3>What to look for</h3>
          <ul>
            {lookFor(lesson.part, plan).map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </section>
        <div className={styles.presses}>
          {after ? (
            <Button
              kind="primary"
              disabled={!lesson.open.includes(after)}
              onPress={() => lesson.goTo(after)}
            >
              {`On: ${lessonTitles[after]}`}
            </Button>
          ) : null}
          {before ? <Button onPress={() => lesson.goTo(before)}>Back</Button> : null}
        </div>
        <EndLesson trialId={whole.trial.id} lesson={lesson} />
      </div>
    </>
  )
}

function EndLesson({ trialId, lesson }: { trialId: string; lesson: ReturnType<typeof useLesson> }) {
  const [asking, setAsking] = useState(false)
  const [, go] = useLocation()
  const end = async () => {
    await lesson.end()
    go(`/trial/${trialId}/findings`)
  }
  return (
    <div>
      <Button kind="quiet" onPress={() => setAsking(true)}>
        End the lesson
      </Button>
      <Dialog
        title="End the lesson?"
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button kind="primary" onPress={end}>
              End it
            </Button>
            <Button onPress={() => setAsking(false)}>Go on</Button>
          </>
        }
      >
        <p>The answer is uncovered, and what the learner said here is forgotten.</p>
      </Dialog>
    </div>
  )
}
