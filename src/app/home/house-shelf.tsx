import { useLiveQuery } from 'dexie-react-hooks'
import { Link } from 'wouter'
import { Section } from '@/app/kit/page/section.tsx'
import { useServices } from '@/app/services/services.ts'
import { houseInForce } from '@/core/house/house-record.ts'
import { restsOnText } from '@/core/wording/house/house-text.ts'
import styles from './house-shelf.module.css'

/** The house formulas of the notebook, the one changed last first; nothing while there are none. */
export function HouseShelf() {
  const { notebook } = useServices()
  const houses = useLiveQuery(() => notebook.houses(), [notebook])
  if (!houses || houses.length === 0) return null
  return (
    <Section title="House formulas">
      <ul className={styles.houses}>
        {houses.map((house) => {
          const rests = houseInForce(house).restsOn.at(-1)
          return (
            <li key={house.id}>
              <Link href={`/house/${house.id}`} className={styles.house ?? ''}>
                <b>{house.name}</b>
                {rests ? <span className={styles.rests}>{restsOnText(rests)}</span> : null}
              </Link>
            </li>
          )
        })}
      </ul>
    </Section>
  )
}
