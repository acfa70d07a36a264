import { useState } from 'react'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import unseen from '@/app/kit/look/unseen.module.css'
import { RoomFor } from '@/app/plan/field/room-for.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { useServices } from '@/app/services/services.ts'
import { stepKindNames } from '@/core/plan-edits/method/step-presets.ts'
import { withStepOfKind } from '@/core/plan-edits/method/with-step.ts'
import { moved } from '@/core/plan-edits/parts/in-part.ts'
import { type StepKind, stepKinds } from '@/core/trial/step.ts'
import styles from './method-section.module.css'
import { StepRow } from './step-row.tsx'

const addOptions = [
  { value: '', label: 'Choose a kind of step' },
  ...stepKinds.map((kind) => ({ value: kind as string, label: stepKindNames[kind] })),
]

/** The method from feeding to cutting: steps in order, each with its hands, its wait and what ends it. */
export function MethodSection() {
  const steps = usePlanPage((page) => page.plan.steps)
  const { change } = usePlanActions()
  const { newId } = useServices()
  const [said, setSaid] = useState('')
  const add = (picked: string) => {
    const kind: StepKind | undefined = stepKinds.find((each) => each === picked)
    if (kind) change((plan) => withStepOfKind(plan, kind, newId()))
  }
  const move = (id: string, by: -1 | 1) => {
    const place = steps.findIndex((step) => step.id === id) + by
    const step = steps.find((each) => each.id === id)
    if (!step || place < 0 || place >= steps.length) return
    change((plan) => ({ ...plan, steps: moved(plan.steps, id, by) }))
    setSaid(`${step.name} is now step ${place + 1} of ${steps.length}.`)
  }
  return (
    <PlanSection id="plan-method" aside="the same for every level, but for what changes">
      {steps.length === 0 ? (
        <p>Write the method down step by step, from the mix to the cut.</p>
      ) : null}
      <ol className={styles.steps}>
        {steps.map((step, index) => (
          <StepRow key={step.id} step={step} index={index} count={steps.length} onMove={move} />
        ))}
      </ol>
      <p className={unseen.unseen} aria-live="polite">
        {said}
      </p>
      <TroubleHere at="/steps" />
      <RoomFor part="steps" count={steps.length}>
        <SelectField label="Add a step" value="" options={addOptions} onValue={add} />
      </RoomFor>
    </PlanSection>
  )
}
