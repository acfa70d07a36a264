import { lazy, Suspense } from 'react'
import { Link } from 'wouter'
import { useServices } from '@/app/services/services.ts'
import { dayText } from './day-text.ts'
import { FoundIn } from './found-in.tsx'
import styles from './home.module.css'
import { stageWords, titleOf } from './stage-words.ts'
import { TrialMenu, type TrialMenuProps } from './trial-menu.tsx'

/** Loaded once there is a trial to picture: an empty notebook opens without it. */
const RailPicture = lazy(async () => ({
  default: (await import('./rail-picture.tsx')).RailPicture,
}))

/** One trial in the book: what it asks, its levels, where it stands, and what can be done with it. */
export function TrialLine({ search, ...props }: TrialMenuProps & { search: string }) {
  const { summary } = props
  const { now } = useServices()
  const { words, place } = stageWords(summary)
  return (
    <li className={styles.line}>
      <div className={styles.asks}>
        <h2 className={styles.question}>
          {summary.binned ? (
            titleOf(summary)
          ) : (
            <Link href={`/trial/${summary.trialId}/${place}`}>{titleOf(summary)}</Link>
          )}
        </h2>
        <p className={styles.soft}>
          <b className={styles.stage}>{words}</b>
          {` · ${summary.sessionsDone} of ${summary.plannedSessions} ${summary.plannedSessions === 1 ? 'session' : 'sessions'} · ${dayText(summary.lastAt, now())}`}
        </p>
        {summary.answer !== undefined && !summary.sealed ? (
          <p className={styles.answer}>{summary.answer}</p>
        ) : null}
        <FoundIn summary={summary} search={search} />
      </div>
      <Suspense fallback={<div className={styles.picture} />}>
        <RailPicture summary={summary} />
      </Suspense>
      <TrialMenu {...props} />
    </li>
  )
}
