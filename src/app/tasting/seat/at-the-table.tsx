import { useState } from 'react'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { arriveAt } from './arrive-at.ts'
import { BallotForm } from './ballot-form.tsx'
import type { Seat } from './seat.ts'
import { SetForm } from './set-form.tsx'
import styles from './tasting.module.css'

/** One taster with the device: the next code in their order, its questions, the seal; at the end it is handed on. */
export function AtTheTable({ seat }: { seat: Seat }) {
  const { view, onLeave } = seat
  const [againCode, setAgainCode] = useState<string | null>(null)
  const code = againCode ?? view.nextCode
  const serving = view.servings.find((each) => each.code === code)
  const openSet = view.sets.find((set) => !set.done)
  const done = view.servings.filter((each) => each.done)
  return (
    <section className={styles.stack}>
      <div className={styles.head}>
        <PageHeading>{seat.name}, at the table</PageHeading>
        <Button onPress={onLeave}>Hand on</Button>
      </div>
      {view.warmUpCode !== null && done.length === 0 ? (
        <p className={styles.quiet}>{view.warmUpCode} comes first, to warm up; it is not scored.</p>
      ) : null}
      {serving ? (
        <BallotForm
          key={serving.code}
          seat={seat}
          serving={serving}
          onDone={() => setAgainCode(null)}
        />
      ) : openSet ? (
        <SetForm key={openSet.codes.join()} seat={seat} set={openSet} />
      ) : (
        <div className={styles.finished}>
          <p className={styles.lead} tabIndex={-1} ref={arriveAt}>
            Thank you. All your ballots are sealed.
          </p>
          <Button kind="primary" size="bench" onPress={onLeave}>
            Hand the device on
          </Button>
        </div>
      )}
      {done.length > 0 ? (
        <details className={styles.mend}>
          <summary>Change a sealed ballot of mine</summary>
          <div className={styles.seats}>
            {done.map((each) => (
              <Button key={each.code} onPress={() => setAgainCode(each.code)}>
                {each.code}
              </Button>
            ))}
          </div>
        </details>
      ) : null}
    </section>
  )
}
