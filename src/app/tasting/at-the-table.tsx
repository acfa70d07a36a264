import { useState } from 'react'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { blindView } from '@/core/tasting/blind-view.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { arriveAt } from './arrive-at.ts'
import { BallotForm } from './ballot-form.tsx'
import { SetForm } from './set-form.tsx'
import styles from './tasting.module.css'
import { useTable } from './tasting-context.ts'

/** One taster with the device: the next code in their order, its questions, the seal; at the end it is handed on. */
export function AtTheTable({ tasterId, onLeave }: { tasterId: string; onLeave: () => void }) {
  const { whole, session } = useTable()
  const view = blindView(whole, session.id, tasterId)
  const [againCode, setAgainCode] = useState<string | null>(null)
  const code = againCode ?? view.nextCode
  const openSet = view.sets.find((set) => !set.done)
  const done = view.servings.filter((serving) => serving.done)
  return (
    <section className={styles.stack}>
      <div className={styles.head}>
        <PageHeading>{tasterName(tasterId, whole.kitchen)}, at the table</PageHeading>
        <Button onPress={onLeave}>Hand on</Button>
      </div>
      {view.warmUpCode !== null && done.length === 0 ? (
        <p className={styles.quiet}>{view.warmUpCode} comes first, to warm up; it is not scored.</p>
      ) : null}
      {code !== null ? (
        <BallotForm
          key={code}
          tasterId={tasterId}
          code={code}
          ordinal={`${view.servings.find((each) => each.code === code)?.position ?? 1} of ${view.servings.length}`}
          questions={view.questions}
          onDone={() => setAgainCode(null)}
        />
      ) : openSet ? (
        <SetForm key={openSet.codes.join()} tasterId={tasterId} codes={openSet.codes} />
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
            {done.map((serving) => (
              <Button key={serving.code} onPress={() => setAgainCode(serving.code)}>
                {serving.code}
              </Button>
            ))}
          </div>
        </details>
      ) : null}
    </section>
  )
}
