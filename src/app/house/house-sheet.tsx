import type { HouseCard } from '@/core/house/house-card.ts'
import { type House, houseInForce, type Yield } from '@/core/house/house-record.ts'
import {
  houseCaution,
  methodLine,
  restsOnText,
  yieldText,
} from '@/core/wording/house/house-text.ts'
import { dateText } from '@/core/wording/words/date-text.ts'
import styles from './house.module.css'
import { HouseLedger } from './house-ledger.tsx'

interface HouseSheetProps {
  house: House
  card: HouseCard
  made: Yield
  degrees: (celsius: number) => string
}

/** The card of a house formula on one page of A5. */
export function HouseSheet({ house, card, made, degrees }: HouseSheetProps) {
  const revision = houseInForce(house)
  const warm = card.water ? ` Dough ${degrees(card.water.wantedDoughCelsius)} from the mixer.` : ''
  return (
    <article className={styles.sheet}>
      <p className={styles.running}>
        <b>EVENHAND</b>
        <span>adopted {dateText(house.createdAt, revision.zone)}</span>
        <span>House formula</span>
      </p>
      <h1>{house.name}</h1>
      <p>
        {yieldText(made, card.pieceGrams)}.{warm}
      </p>
      <HouseLedger card={card} />
      <h2>Method</h2>
      <ol className={styles.method}>
        {revision.steps.map((step) => (
          <li key={step.id}>{methodLine(step, degrees)}</li>
        ))}
      </ol>
      <p className={styles.foot}>
        {revision.restsOn.map((one) => `${one.question} ${restsOnText(one)}`).join(' ')}{' '}
        {houseCaution}
      </p>
    </article>
  )
}
