import type { WaitRow } from '@/core/clock-plan/waits-of-day.ts'
import { comesOutText, plannedWaitText } from '@/core/wording/plan/clock-day-text.ts'
import styles from './clock-page.module.css'

/** Every wait of the method, planned and as it comes out. */
export function WaitsTable({ waits }: { waits: readonly WaitRow[] }) {
  return (
    <table className={`${styles.table} ${styles.waits}`}>
      <thead>
        <tr>
          <th scope="col">Waits, min</th>
          <th scope="col" className={styles.figure}>
            planned
          </th>
          <th scope="col" className={styles.figure}>
            comes out
          </th>
        </tr>
      </thead>
      <tbody>
        {waits.map((row) => (
          <tr key={row.stepId}>
            <th scope="row">
              {row.name}
              {row.byMark ? ', by the mark' : ''}
            </th>
            <td className={styles.figure}>{plannedWaitText(row)}</td>
            <td className={`${styles.figure} ${row.off.length > 0 ? styles.off : ''}`}>
              {row.off.length > 0 ? '◆ ' : ''}
              {comesOutText(row)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
