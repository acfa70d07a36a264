import { memo } from 'react'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { type TemperatureUnit, temperatureText } from '@/app/kit/field/temperature-words.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useOpened } from '@/app/plan/page/use-opened.ts'
import { useTakeOut } from '@/app/plan/page/use-take-out.ts'
import { takeOutStep } from '@/core/plan-edits/take-out/take-out.ts'
import type { Step } from '@/core/trial/step.ts'
import { endsWords } from '@/core/wording/plan/ends-by-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import styles from './method-section.module.css'
import { StepFields } from './step-fields.tsx'

interface Props {
  step: Step
  index: number
  count: number
  onMove: (id: string, by: -1 | 1) => void
}

/** One step in a line; open, its fields. It moves by the two arrow buttons, or by Alt with an arrow key anywhere in it. */
export const StepRow = memo(function StepRow({ step, index, count, onMove }: Props) {
  const [open, setOpen] = useOpened(`/steps/${index}`)
  const takeOut = useTakeOut()
  const unit = useTemperatureUnit()
  const acts = usePlanPage((page) => page.plan.factor.acts)
  const moves = 'stepId' in acts && acts.stepId === step.id
  return (
    <li
      className={styles.step}
      data-path={`/steps/${index}`}
      onKeyDown={(key) => {
        if (!key.altKey || (key.key !== 'ArrowUp' && key.key !== 'ArrowDown')) return
        key.preventDefault()
        onMove(step.id, key.key === 'ArrowUp' ? -1 : 1)
      }}
    >
      <div className={styles.head}>
        <span className={styles.number}>{index + 1}</span>
        <span className={styles.name}>
          <b>{step.name}</b> <span className={styles.times}>{timesWords(step, unit)}</span>
          {moves ? ' · set by the levels' : null}
        </span>
        <span className={styles.presses}>
          <Button
            size="small"
            label={`Move ${step.name} up`}
            disabled={index === 0}
            onPress={() => onMove(step.id, -1)}
          >
            ↑
          </Button>
          <Button
            size="small"
            label={`Move ${step.name} down`}
            disabled={index === count - 1}
            onPress={() => onMove(step.id, 1)}
          >
            ↓
          </Button>
          <Button
            size="small"
            expanded={open}
            label={`${open ? 'Close' : 'Change'} ${step.name}`}
            onPress={() => setOpen(!open)}
          >
            {open ? 'Close' : 'Change'}
          </Button>
          <Button
            kind="quiet"
            size="small"
            label={`Remove ${step.name}`}
            disabled={moves}
            onPress={() => takeOut((plan) => takeOutStep(plan, step.id))}
          >
            Remove
          </Button>
        </span>
      </div>
      {open ? <StepFields step={step} index={index} /> : null}
    </li>
  )
})

function timesWords(step: Step, unit: TemperatureUnit): string {
  const times = [
    step.handsSeconds > 0 ? `${durationText(step.handsSeconds)} by hand` : '',
    step.waitSeconds > 0 ? `wait ${durationText(step.waitSeconds)}` : '',
  ].filter(Boolean)
  const each = times.join(', ')
  const repeated = step.repeats > 1 ? `${step.repeats} × ${each}` : each
  return [
    repeated,
    step.per === 'piece' ? 'each piece' : '',
    endsWords(step, (celsius) => temperatureText(celsius, unit)),
  ]
    .filter(Boolean)
    .join(' · ')
}
