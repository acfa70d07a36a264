import { Notice } from '@/app/kit/page/notice.tsx'
import { useUncoveredTrial } from '@/app/kit/page/uncovered-trial.ts'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'

/** Said where the device is handed over, while its baker's look behind the codes still holds. */
export function BakersLook({ trialId }: { trialId: string }) {
  const uncovered = useUncoveredTrial()
  if (uncovered.trialId !== trialId) return null
  return (
    <Notice kind="know" title="Plan and Bench are uncovered on this device">
      <div className={styles.stack}>
        <p>They are covered again as soon as a taster picks their initials below.</p>
        <Button onPress={uncovered.cover}>Cover them now</Button>
      </div>
    </Notice>
  )
}
