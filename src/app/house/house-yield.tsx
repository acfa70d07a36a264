import { Choice } from '@/app/kit/field/choice.tsx'
import { MassField } from '@/app/kit/field/mass-field.tsx'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import {
  usualGramsPerMillilitre,
  usualGramsPerSquareCentimetre,
} from '@/core/house/formula-at-yield.ts'
import type { Yield } from '@/core/house/house-record.ts'
import { most } from '@/core/record/most.ts'
import { mostGrams } from '@/core/record/quantity.ts'
import { massUnit } from '@/core/units/mass-text.ts'
import { massBetweenText, wholeBetweenText } from '@/core/wording/words/field-check-text.ts'
import type { OneNumber } from './between-field.tsx'
import styles from './house.module.css'
import { PanFields, TinFields } from './vessel-fields.tsx'

interface HouseYieldProps {
  made: Yield
  onMade: (made: Yield) => void
}

const ways: { value: Yield['by']; label: string }[] = [
  { value: 'pieces', label: 'Pieces' },
  { value: 'pans', label: 'Pans' },
  { value: 'tins', label: 'Tins' },
  { value: 'flour', label: 'Flour' },
]

/** How much is made, in the baker's own measure: pieces and their mass, pans by their floor, tins by what they hold, flour. */
export function HouseYield({ made, onMade }: HouseYieldProps) {
  return (
    <div>
      <Choice
        label="Measured by"
        hideLabel
        row
        value={made.by}
        options={ways}
        onValue={(by) => onMade(started(by, made))}
      />
      <div className={styles.fields}>
        {made.by === 'flour' ? (
          <Grams
            label="Flour"
            value={made.flourGrams}
            onValue={(flourGrams) => onMade({ ...made, flourGrams })}
          />
        ) : (
          <NumberField
            label={made.by === 'pieces' ? 'How many' : made.by === 'pans' ? 'Pans' : 'Tins'}
            value={made.pieces}
            check={(count) =>
              Number.isInteger(count) && count >= 1 && count <= most.piecesOfBatch
                ? undefined
                : wholeBetweenText(1, most.piecesOfBatch)
            }
            onValue={(pieces) => (pieces === null ? undefined : onMade({ ...made, pieces }))}
          />
        )}
        <OwnFields made={made} onMade={onMade} />
      </div>
    </div>
  )
}

function OwnFields({ made, onMade }: HouseYieldProps) {
  switch (made.by) {
    case 'flour':
      return null
    case 'pieces':
      return (
        <Grams
          label="Each"
          value={made.pieceGrams}
          onValue={(pieceGrams) => onMade({ ...made, pieceGrams })}
        />
      )
    case 'pans':
      return <PanFields made={made} onMade={onMade} />
    case 'tins':
      return <TinFields made={made} onMade={onMade} />
  }
}

const Grams = ({ label, value, onValue }: OneNumber) => (
  <MassField
    label={label}
    value={value}
    digits={massUnit() === 'g' ? 2 : 4}
    check={(grams) =>
      grams >= 1 && grams <= mostGrams ? undefined : massBetweenText(1, mostGrams)
    }
    onValue={(grams) => (grams === null ? undefined : onValue(grams))}
  />
)

/** A yield in another measure to start from: as many pieces as before, usual pans and tins (common practice, no source). */
function started(by: Yield['by'], before: Yield): Yield {
  if (before.by === by) return before
  const pieces = before.by === 'flour' ? 1 : before.pieces
  const lossPercent = before.by === 'flour' ? 0 : before.lossPercent
  switch (by) {
    case 'flour':
      return { by, flourGrams: 1000 }
    case 'pieces':
      return { by, pieces, pieceGrams: 500, lossPercent }
    case 'pans':
      return {
        ...{ by, pieces, lossPercent, gramsPerSquareCentimetre: usualGramsPerSquareCentimetre },
        pan: { is: 'rectangle', length: 40, width: 30 },
      }
    case 'tins':
      return {
        ...{ by, pieces, lossPercent, gramsPerMillilitre: usualGramsPerMillilitre },
        tin: {
          is: 'box',
          topLength: 30,
          topWidth: 11,
          bottomLength: 29,
          bottomWidth: 10,
          height: 9,
        },
      }
  }
}
