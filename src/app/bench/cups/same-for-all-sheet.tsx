import { useBench } from '@/app/bench/bench-context.ts'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import { doughsInWork } from '@/core/session/line.ts'
import { cupSheet } from '@/core/weighing/cup-sheet.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { rowHead, weightIn } from '@/core/weighing/written-sheet.ts'
import { handsGuessText, sameForAllText } from '@/core/wording/weighing/cups-text.ts'
import styles from './cups.module.css'

/** The weigh sheet of a baker who tastes: one column of grams for all, letters in the order of work; no sum and no level. */
export function SameForAllSheet() {
  const { whole, plan, session } = useBench()
  const degrees = useTemperatureText()
  const cups = cupSheet(weighSheet(plan, whole.kitchen))
  if (!cups.ok) return null
  const water = waterPlan(plan, whole.kitchen)
  const batches = new Map(doughsInWork(session).map((batch) => [batch.id, batch.letter]))
  const letters = session.dealt.doughOrder.flatMap((id) => batches.get(id) ?? [])
  const line = (key: string, head: string, grams: string) => (
    <tr key={key}>
      <th>{head}</th>
      <td>{grams}</td>
      {letters.map((letter) => (
        <td key={letter}>
          <span className={styles.box} />
        </td>
      ))}
    </tr>
  )
  const { rows } = cups.same
  const cupAfter = rows.find(({ key }) => key === cups.row.key) ?? rows.at(-1)
  return (
    <>
      <h1>Weigh sheet for a baker who tastes, session {session.number}</h1>
      <p>{sameForAllText}</p>
      {water.ok ? <p>Water for all: {degrees(water.oneWaterCelsius)}.</p> : null}
      <table className={styles.table}>
        <thead>
          <tr>
            <th />
            <th>g, each</th>
            {letters.map((letter) => (
              <th key={letter}>{letter}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.flatMap((row) => [
            line(row.key, rowHead(row, cups.same), weightIn(cups.same, row, 0)?.text ?? ''),
            ...(row === cupAfter
              ? [
                  <tr key="cup">
                    <th>{cups.row.name} from its own cup</th>
                    <td>all of it</td>
                    {letters.map((letter) => (
                      <td key={letter}>
                        cup {letter} <span className={styles.box} />
                      </td>
                    ))}
                  </tr>,
                ]
              : []),
          ])}
        </tbody>
      </table>
      <p>{handsGuessText}</p>
    </>
  )
}
