import { Link } from 'wouter'
import { LevelRail } from '@/app/kit/level-rail.tsx'
import { useServices } from '@/app/services/services.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import { dayText } from './day-text.ts'
import styles from './home.module.css'
import { isCovered, stageWords } from './stage-words.ts'
import { TrialMenu, type TrialMenuProps } from './trial-menu.tsx'

type TrialLineProps = TrialMenuProps

/** One trial in the book: what it asks, its levels, where it stands, and what can be done with it. */
export function TrialLine(props: TrialLineProps) {
  const { summary } = props
  const { now } = useServices()
  const { words, place } = stageWords[summary.stage]
  return (
    <li className={styles.line}>
      <div className={styles.asks}>
        <h2 className={styles.question}>
          {summary.binned ? (
            summary.question
          ) : (
            <Link href={`/trial/${summary.trialId}/${place}`}>{summary.question}</Link>
          )}
        </h2>
        <p className={styles.soft}>
          <b className={styles.stage}>{words}</b>
          {` · ${summary.sessionsDone} of ${summary.plannedSessions} ${summary.plannedSessions === 1 ? 'session' : 'sessions'} · ${dayText(summary.lastAt, now())}`}
        </p>
      </div>
      <RailPicture summary={summary} />
      <TrialMenu {...props} />
    </li>
  )
}

function RailPicture({ summary }: { summary: Summary }) {
  if (isCovered(summary))
    return (
      <div className={styles.picture}>
        <div className={styles.coveredPicture} aria-hidden="true" />
        <p className={styles.under}>levels under cover</p>
      </div>
    )
  const levels: Level[] = summary.levels.map(({ label, value }, index) => ({
    ...{ id: String(index), label, value, control: false },
  }))
  return (
    <div className={styles.picture}>
      {levels.length > 0 ? (
        <LevelRail
          levels={levels}
          factorName={summary.factorName}
          unitOfMeasure={summary.unitOfMeasure}
          size="picture"
        />
      ) : null}
      <p className={styles.under}>
        {[summary.factorName, summary.unitOfMeasure].filter(Boolean).join(', ')}
      </p>
    </div>
  )
}
