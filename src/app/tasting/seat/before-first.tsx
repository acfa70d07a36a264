import { useState } from 'react'
import { CautionWords } from '@/app/kit/page/caution-words.tsx'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { containsText, orderText } from '@/core/wording/tasting/before-first-text.ts'
import { referencesEaten, referencesText } from '@/core/wording/tasting/reference-text.ts'
import type { Seat } from './seat.ts'
import { SeatPage } from './seat-page.tsx'
import styles from './tasting.module.css'

/** Before a taster's first ballot: what comes, what is in it, and whether they may eat it. */
export function BeforeFirst({ seat }: { seat: Seat }) {
  const { view, allergens, onHeard, onDecline, name } = seat
  const [asking, setAsking] = useState(false)
  return (
    <SeatPage
      title={asking ? 'Then do not taste.' : 'Before you taste'}
      titleLook="words"
      name={name}
      foot={
        asking ? (
          <>
            <Button size="bench" kind="primary" onPress={onDecline}>
              I do not taste
            </Button>
            <Button size="bench" onPress={() => setAsking(false)}>
              Back
            </Button>
          </>
        ) : (
          <>
            <Button size="bench" kind="primary" onPress={onHeard}>
              I can eat this: begin
            </Button>
            <Button size="bench" onPress={() => setAsking(true)}>
              I had better not
            </Button>
          </>
        )
      }
    >
      {asking ? (
        <p>You are marked as not tasting. Nobody is told why, and no ballot of yours is awaited.</p>
      ) : (
        <>
          <p>{orderText(view)}</p>
          <p className={styles.lead}>{containsText(allergens)}</p>
          {view.questions.some(({ scale }) => referencesText(scale) !== '') ? (
            <p>{referencesEaten}</p>
          ) : null}
          <p>
            <b>Tell the host now</b> of any allergy. Never taste raw dough. Local food-safety rules
            come first.
          </p>
          <Fold name="Allergens and cautions" result="in full">
            <CautionWords topics={['allergens', 'raw-dough', 'chilled-food']} />
          </Fold>
        </>
      )}
    </SeatPage>
  )
}
