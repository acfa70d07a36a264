import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/kit/taken/taken.module.css'
import { samples } from '@/app/services/samples.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'

interface Props {
  onPick: (plan: Plan) => void
  onClose: () => void
}

/** The sample trials, one of them to take its plan; its sessions and scores stay where they are. */
export function SamplePicker({ onPick, onClose }: Props) {
  const take = async (sample: (typeof samples)[number]) => {
    const read = readTrialFile(await sample.read())
    if (!read.ok) throw new Error(`the sample ${sample.name} cannot be read`)
    onPick(planInForce(read.whole))
    onClose()
  }
  return (
    <Dialog title="Start from a sample" open onClose={onClose}>
      <ul className={styles.read}>
        {samples.map((sample) => (
          <li key={sample.name}>
            <b>{sample.title}</b>
            <Button
              size="small"
              onPress={() => take(sample)}
              label={`Use its plan: ${sample.title}`}
            >
              Use its plan
            </Button>
          </li>
        ))}
      </ul>
    </Dialog>
  )
}
