import { useContext, useState } from 'react'
import { Link } from 'wouter'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { useServices } from '@/app/services/services.ts'
import { coveredTrials, withoutCovered } from '@/core/lesson/covered-trials.ts'
import { lessonCovers } from '@/core/wording/lesson/lesson-covers.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { dayText } from './day-text.ts'
import { FoundIn } from './found-in.tsx'
import styles from './home.module.css'
import { LatePicture } from './late-picture.tsx'
import { stageWords, titleOf } from './stage-words.ts'
import { TrialMenu, type TrialMenuProps } from './trial-menu.tsx'

/** One trial in the book: what it asks, its levels, where it stands. The whole row opens it; a press at its end opens what can be done with it. */
export function TrialLine({ search, ...props }: TrialMenuProps & { search: string }) {
  const { summary } = props
  const { now } = useServices()
  const lessons = useContext(LessonsContext)
  const inLesson = coveredTrials([summary.trialId], lessons).length > 0
  const [open, setOpen] = useState(false)
  const { words, place } = stageWords(summary)
  const title = titleOf(summary)
  return (
    <li className={styles.line}>
      <div className={styles.asks}>
        <h2 className={styles.question} {...landing}>
          {summary.binned ? (
            title
          ) : (
            <Link href={`/trial/${summary.trialId}/${place}`} className={styles.whole ?? ''}>
              {title}
            </Link>
          )}
        </h2>
        <p className={styles.soft}>
          <b className={styles.stage}>{words}</b>
          {` · ${summary.sessionsDone} of ${summary.plannedSessions} ${summary.plannedSessions === 1 ? 'session' : 'sessions'} · ${dayText(summary.lastAt, now())}`}
        </p>
        {summary.answer !== undefined && !summary.sealed ? (
          <p className={styles.answer}>
            {inLesson ? lessonCovers.line : boundUnits(summary.answer)}
          </p>
        ) : null}
        <FoundIn summary={withoutCovered(summary, lessons)} search={search} />
      </div>
      <LatePicture summary={summary} />
      <button
        type="button"
        className={styles.more}
        aria-label={`More: ${title}`}
        aria-expanded={open}
        onClick={() => setOpen(!open)}
      >
        <svg aria-hidden="true" width="20" height="6" viewBox="0 0 20 6" fill="currentColor">
          <circle cx="3" cy="3" r="2.1" />
          <circle cx="10" cy="3" r="2.1" />
          <circle cx="17" cy="3" r="2.1" />
        </svg>
      </button>
      {open ? <TrialMenu {...props} /> : null}
    </li>
  )
}
