import { useState } from 'react'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { lateSheetText } from '@/core/wording/tasting/ballot-changes-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { TypedSheet } from './typed-sheet.tsx'

/**
 * Ballots that came on paper, typed in sheet by sheet; who typed is kept, when they were written is not invented. Once the tasting is
 * over a sheet may still come: it is kept apart.
 */
export function PaperEntry() {
  const { whole, state } = useTable()
  const [tasterId, setTasterId] = useState<string | null>(null)
  const tasters = state.tasters.filter(
    ({ presence, missing }) => presence !== 'declined' && presence !== 'left' && missing.length > 0,
  )
  const over = state.seal === 'closed' || state.seal === 'unsealed'
  if (over && tasters.length === 0) return null
  const name = (id: string) => tasterName(id, whole.kitchen)
  return (
    <Fold
      name={over ? 'A paper ballot that came late' : 'Type in from paper'}
      result={
        over
          ? 'kept apart'
          : tasters.length === 0
            ? 'nothing is missing'
            : `${tasters.length} to come`
      }
      level={3}
    >
      <div className={styles.stack}>
        {over ? <p>{lateSheetText(state.seal === 'unsealed')}</p> : null}
        <div className={styles.seats}>
          {tasters.map((taster) => (
            <Button
              key={taster.tasterId}
              pressed={taster.tasterId === tasterId}
              onPress={() => setTasterId(taster.tasterId)}
            >
              Type in {name(taster.tasterId)}
            </Button>
          ))}
        </div>
        {tasterId === null ? null : (
          <TypedSheet
            key={tasterId}
            tasterId={tasterId}
            name={name(tasterId)}
            onSealed={() => setTasterId(null)}
          />
        )}
      </div>
    </Fold>
  )
}
