import type { DayFound } from '@/app/worker/clock-worker.ts'
import { whoseHands } from '@/core/clock-plan/whose-hands.ts'
import { runningHead } from '@/core/report/running-head.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { dayMoments, helpersText, readingOf } from '@/core/wording/plan/clock-day-text.ts'
import { byHelperText, runRowText, runWaitText } from '@/core/wording/plan/run-sheet-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import styles from './clock-page.module.css'

interface Props {
  day: DayFound
  plan: Plan
  session: Session
}

/** The day in clock order with a box to tick, a blank for when it was done and one for what is read. It tells no level. */
export function PrintedRunSheet({ day, plan, session }: Props) {
  const moments = dayMoments(day.originAt, plan.zone)
  const hands = whoseHands(day.rows, plan, day.originAt)
  const kinds = new Map(plan.steps.map(({ id, kind }) => [id, kind]))
  return (
    <>
      <style>{runningHead(`Run sheet, session ${session.number}. ${plan.question}`)}</style>
      <p className={styles.paperHead}>
        {plan.question} Session {session.number}. Run sheet
      </p>
      {helpersText(plan).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <table className={styles.runSheet}>
        <thead>
          <tr>
            <th scope="col">Done</th>
            <th scope="col">Plan</th>
            <th scope="col">Done at</th>
            <th scope="col">Do</th>
            <th scope="col">Hands</th>
            <th scope="col">Then wait</th>
            <th scope="col">Read</th>
          </tr>
        </thead>
        <tbody>
          {day.rows.map((row, at) => {
            const today = moments.day(row.beginSeconds)
            const before = day.rows[at - 1]
            const turns = today !== '' && (!before || moments.day(before.beginSeconds) !== today)
            const reading = readingOf(row, kinds.get(row.stepId) ?? '')
            return (
              <tr
                key={row.id}
                className={before && before.stepId !== row.stepId ? styles.next : ''}
              >
                <td>
                  <i className={styles.box} />
                </td>
                <th scope="row">
                  {turns ? <span>{today} </span> : null}
                  <span className={styles.together}>{moments.time(row.beginSeconds)}</span>
                </th>
                <td>
                  <i className={styles.blank} />
                </td>
                <td>{runRowText(row)}</td>
                <td className={styles.together}>
                  {row.endSeconds > row.beginSeconds
                    ? durationText(row.endSeconds - row.beginSeconds)
                    : ''}
                  {hands.get(row.id)?.whose === 'helper' ? (
                    <b> {byHelperText(hands.get(row.id))}</b>
                  ) : null}
                </td>
                <td>{runWaitText(row)}</td>
                <td className={styles.together}>
                  {reading ? (
                    <>
                      <i className={styles.blank} /> {reading}
                    </>
                  ) : null}
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
      <p>Anything done otherwise: write it on the back with its time.</p>
    </>
  )
}
