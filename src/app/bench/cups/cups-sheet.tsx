import { useBench } from '@/app/bench/bench-context.ts'
import { doughsInWork } from '@/core/session/line.ts'
import { cupSheet } from '@/core/weighing/cup-sheet.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { cupsApartText, cupsSteps } from '@/core/wording/weighing/cups-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import styles from './cups.module.css'

/** What goes into each lidded cup, by its ticket; folded and sealed once the cups are filled. Tickets and letters to cut below. */
export function CupsSheet() {
  const { whole, plan, session } = useBench()
  const cups = cupSheet(weighSheet(plan, whole.kitchen))
  const tickets = session.dealt.tickets ?? []
  if (!cups.ok) return null
  const letters = doughsInWork(session)
    .map(({ letter }) => letter)
    .toSorted((one, other) => one.localeCompare(other))
  // In the order of their numbers: the order of the levels would stay in mind.
  const rows = tickets
    .map(({ ticket, levelId }) => ({
      ticket,
      cup: cups.cups.find((each) => each.levelId === levelId),
      level: plan.levels.find(({ id }) => id === levelId),
    }))
    .toSorted((one, other) => one.ticket.localeCompare(other.ticket))
  return (
    <>
      <h1>The {countText(rows.length, 'cup')}: fill, then fold and seal</h1>
      <p>
        To be filled the evening before, best by somebody else.{' '}
        {asSentenceStart(countText(rows.length, 'equal cup'))} with lids that nobody sees through.
        Stick each ticket under its cup, number down.
      </p>
      <table className={styles.table}>
        <thead>
          <tr>
            <th>Filled</th>
            <th>Ticket</th>
            <th>{cups.row.name}, g</th>
            <th>Scale showed</th>
            <th>makes</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ ticket, cup, level }) => (
            <tr key={ticket}>
              <td>
                <span className={styles.box} />
              </td>
              <td className={styles.ticket}>{ticket}</td>
              <td>{cup?.text}</td>
              <td className={styles.blank} />
              <td>{level ? levelText(level, plan.factor.unitOfMeasure) : ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ol>
        {cupsSteps(letters).map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p className={styles.fold}>fold here, numbers inside</p>
      <div className={styles.cut}>
        {rows.map(({ ticket }) => (
          <span key={ticket}>{ticket}</span>
        ))}
      </div>
      <div className={styles.cut}>
        {letters.map((letter) => (
          <span key={letter}>{letter}</span>
        ))}
      </div>
      <p>{cupsApartText(cups.cups)}</p>
    </>
  )
}
