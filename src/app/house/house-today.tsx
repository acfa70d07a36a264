import { TemperatureField } from '@/app/kit/field/temperature-field.tsx'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { temperatureText } from '@/app/kit/field/temperature-words.ts'
import { Section } from '@/app/kit/page/section.tsx'
import type { HouseCard } from '@/core/house/house-card.ts'
import type { HouseRevision } from '@/core/house/house-record.ts'
import type { Today } from '@/core/house/plan-of-house.ts'
import { massText } from '@/core/units/mass-text.ts'
import styles from './house.module.css'

interface HouseTodayProps {
  revision: HouseRevision
  card: HouseCard
  today: Today
  onToday: (today: Today) => void
}

/** The water for today's kitchen: how warm room and flour are, and what the water must then be. */
export function HouseToday({ revision, card, today, onToday }: HouseTodayProps) {
  const unit = useTemperatureUnit()
  const { temperature } = revision
  if (!temperature) return null
  const batch = card.water?.batches[0]
  const wanted = temperatureText(temperature.wantedDoughCelsius, unit)
  const water = batch
    ? `Water at ${temperatureText(Math.round(batch.waterCelsius * 10) / 10, unit)}, for dough of ${wanted}.`
    : `No water goes in at the mix that could bring the dough to ${wanted}.`
  const ice = batch?.ice?.ok ? ` In place of ${massText(batch.ice.grams, 0)} of it take ice.` : ''
  return (
    <Section title="Water today">
      <p role="status">
        {water}
        {ice}
      </p>
      <div className={styles.fields}>
        <TemperatureField
          label="Room"
          leastCelsius={-10}
          mostCelsius={50}
          value={today.roomCelsius ?? temperature.roomCelsius}
          onValue={(roomCelsius) =>
            onToday(roomCelsius === null ? today : { ...today, roomCelsius })
          }
        />
        <TemperatureField
          label="Flour"
          leastCelsius={-10}
          mostCelsius={50}
          value={today.flourCelsius ?? temperature.flourCelsius}
          onValue={(flourCelsius) =>
            onToday(flourCelsius === null ? today : { ...today, flourCelsius })
          }
        />
      </div>
    </Section>
  )
}
