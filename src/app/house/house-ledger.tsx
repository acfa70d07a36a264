import type { HouseCard } from '@/core/house/house-card.ts'
import { massUnit, roundedMass, weightFigure } from '@/core/units/mass-text.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { doughLineText } from '@/core/wording/house/house-text.ts'
import styles from './house.module.css'

/** What to weigh, in the order of work: each preferment as it is fed, then the dough, with its share of all flour. */
export function HouseLedger({ card }: { card: HouseCard }) {
  return (
    <table className={styles.ledger}>
      <caption className={styles.caption}>What to weigh</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">%</th>
          <th scope="col">{massUnit()}</th>
        </tr>
      </thead>
      {card.parts.map((part) => (
        <tbody key={part.key}>
          {card.parts.length > 1 ? (
            <tr className={styles.part}>
              <th scope="rowgroup" colSpan={3}>
                {part.preferment ?? 'Dough'}
              </th>
            </tr>
          ) : null}
          {part.lines.map((line) => (
            <tr key={line.key}>
              <th scope="row">{line.percent === null ? `${line.name}, all of it` : line.name}</th>
              <td>
                {line.percent === null ? '' : plainNumber(Math.round(line.percent * 100) / 100)}
              </td>
              <td>
                <b>{weightFigure(line.grams, line.resolutionGrams)}</b>
              </td>
            </tr>
          ))}
        </tbody>
      ))}
      <tfoot>
        <tr>
          <th scope="row">{doughLineText(card)}</th>
          <td />
          <td>{roundedMass(card.doughGrams, 0)}</td>
        </tr>
      </tfoot>
    </table>
  )
}
