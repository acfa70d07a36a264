import type { DayFound } from '@/app/worker/clock-worker.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { dayMoments, daySentence, offSentence } from '@/core/wording/plan/clock-day-text.ts'
import { ClockFigure } from './clock-figure.tsx'
import styles from './clock-page.module.css'
import { doughName } from './day-verdict.tsx'
import { WaitsTable } from './waits-table.tsx'

interface Props {
  day: DayFound
  plan: Plan
  session: Session
}

/** The day on one page across: the picture, the waits, the oven's loads. */
export function PrintedClock({ day, plan, session }: Props) {
  const moments = dayMoments(day.originAt, plan.zone)
  const nameOf = (batchId: string) => doughName(plan, session, batchId)
  const off = offSentence(day.waits, nameOf)
  return (
    <>
      <p className={styles.paperHead}>
        {plan.question} Session {session.number}. Clock plan
      </p>
      <p>{daySentence(day, plan)} Filled: hands. Open: waiting. Thick: oven.</p>
      <ClockFigure picture={day.picture} levels={plan.levels} moments={moments} across />
      <div className={styles.columns}>
        <WaitsTable waits={day.waits} />
        <div>
          {off ? (
            <p>
              <b>Off:</b> {off}
            </p>
          ) : null}
          <table className={styles.table}>
            <thead>
              <tr>
                <th scope="col">Oven</th>
                <th scope="col" className={styles.figure}>
                  in
                </th>
                <th scope="col" className={styles.figure}>
                  out
                </th>
              </tr>
            </thead>
            <tbody>
              {day.picture.loads.map((load) => (
                <tr key={load.number}>
                  <th scope="row">
                    Load {load.number}: {load.batchIds.map(nameOf).join(', ')}
                  </th>
                  <td className={styles.figure}>{moments.time(load.fromSeconds)}</td>
                  <td className={styles.figure}>{moments.time(load.toSeconds)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </div>
    </>
  )
}
