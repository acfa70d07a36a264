import { useState } from 'react'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { PasteInPlan } from '@/app/plan/formula/paste-in-plan.tsx'
import { usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import styles from '@/app/plan/panels/panel.module.css'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { emptyPlan, planFromOther } from '@/core/plan-edits/start/start-from.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { EarlierTrial } from './earlier-trial.tsx'
import { SamplePicker } from './sample-picker.tsx'

/**
 * The ways into a new plan, offered while nothing in it was changed; they stay until the page is left, so that nothing jumps.
 * A plan that follows from another trial has had its start.
 */
export function StartWays() {
  const store = usePlanStore()
  const { trial } = useWholeTrial()
  const [untouched] = useState(trial.revision === 1 && trial.follows === undefined)
  const [way, setWay] = useState<'paste' | 'sample' | 'earlier' | null>(null)
  if (!untouched) return null
  const close = () => setWay(null)
  const startFrom = (other: Plan) =>
    store
      .getState()
      .changeSaid(
        'Started from another plan',
        (plan) => planFromOther(plan, other, store.getState().kitchen),
        '',
      )
  const empty = () => {
    store.getState().changeSaid('Page emptied', emptyPlan, '', { question: '' })
  }
  return (
    <Section title="Start">
      <p className={styles.words}>
        This plan can be worked as it stands, and changed. Or start from
      </p>
      <div className={styles.presses}>
        <Button size="small" onPress={empty}>
          an empty page
        </Button>
        <Button size="small" onPress={() => setWay('paste')}>
          a pasted formula
        </Button>
        <Button size="small" onPress={() => setWay('sample')}>
          a sample
        </Button>
        <Button size="small" onPress={() => setWay('earlier')}>
          an earlier trial
        </Button>
      </div>
      {way === 'paste' ? <PasteInPlan onClose={close} /> : null}
      {way === 'sample' ? <SamplePicker onPick={startFrom} onClose={close} /> : null}
      {way === 'earlier' ? (
        <EarlierTrial
          title="Start from an earlier trial"
          takes="its plan"
          onPick={startFrom}
          onClose={close}
        />
      ) : null}
    </Section>
  )
}
