import { useState } from 'react'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { TypedSheet } from './typed-sheet.tsx'

/** Ballots that came on paper, typed in sheet by sheet; who typed is kept, when they were written is not invented. */
export function PaperEntry() {
  const { whole, state } = useTable()
  const [tasterId, setTasterId] = useState<string | null>(null)
  const tasters = state.tasters.filter(
    ({ presence, missing }) => presence !== 'declined' && presence !== 'left' && missing.length > 0,
  )
  const name = (id: string) => tasterName(id, whole.kitchen)
  return (
    <Fold
      name="Type in from paper"
      result={tasters.length === 0 ? 'nothing is missing' : `${tasters.length} to come`}
      level={3}
    >
      <div className={styles.stack}>
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
