import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { usePlanActions, usePlanPage } from './plan-page-context.ts'
import styles from './trouble-list.module.css'

/** Everything to mend, then everything to think about; each a press that leads to its field. */
export function TroubleList() {
  const troubles = usePlanPage((page) => page.troubles)
  const unfinished = usePlanPage((page) => page.unfinished)
  const { jumpTo } = usePlanActions()
  const stops = [
    ...Object.entries(unfinished).map(([field, label]) => ({
      to: field,
      text: `${label}: what is typed there cannot stand yet.`,
    })),
    ...troubles
      .filter(({ severity }) => severity === 'stop')
      .map(({ path, text }) => ({ to: path, text })),
  ]
  const asks = troubles.filter(({ severity }) => severity === 'ask')
  return (
    <>
      {stops.length > 0 ? (
        <ul className={styles.list} aria-label="To mend">
          {stops.map(({ to, text }) => (
            <li key={`${to} ${text}`}>
              <button type="button" className={styles.stop} onClick={() => jumpTo(to)}>
                <WarningMark /> {text}
              </button>
            </li>
          ))}
        </ul>
      ) : null}
      {asks.length > 0 ? (
        <ul className={styles.list} aria-label="To think about">
          {asks.map(({ path, text }) => (
            <li key={`${path} ${text}`}>
              <button type="button" className={styles.ask} onClick={() => jumpTo(path)}>
                {text}
              </button>
            </li>
          ))}
        </ul>
      ) : null}
    </>
  )
}
