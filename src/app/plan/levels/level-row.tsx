import { memo } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { levelCheck, percentCheck } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useTakeOut } from '@/app/plan/page/use-take-out.ts'
import { withControl } from '@/core/plan-edits/levels/control.ts'
import { atValue } from '@/core/plan-edits/levels/measured-level.ts'
import { withLevelWaters } from '@/core/plan-edits/levels/own-water.ts'
import { inLevel } from '@/core/plan-edits/parts/in-part.ts'
import { takeOutLevel } from '@/core/plan-edits/take-out/take-out.ts'
import type { Level } from '@/core/trial/level.ts'
import { shortUnit } from '@/core/units/number-text.ts'
import styles from './levels-section.module.css'

interface Props {
  level: Level
  index: number
}

/** One measured level: its value, whether it is the control, and out again. */
export const LevelRow = memo(function LevelRow({ level, index }: Props) {
  const unit = usePlanPage((page) => page.plan.factor.unitOfMeasure)
  const { change } = usePlanActions()
  const takeOut = useTakeOut()
  return (
    <li className={styles.level}>
      <PlanNumber
        field={`level/${level.id}/value`}
        path={`/levels/${index}/value`}
        label={`Level ${index + 1}`}
        hideLabel
        unit={shortUnit(unit)}
        value={level.value}
        check={levelCheck}
        onValue={(value) =>
          change((plan) => inLevel(plan, level.id, (each) => atValue(each, value)))
        }
      />
      <OwnWater level={level} index={index} />
      <ControlMark level={level} />
      <span className={styles.end}>
        <Button
          kind="quiet"
          label={`Remove level ${level.label}`}
          onPress={() => takeOut((plan) => takeOutLevel(plan, level.id))}
        >
          Remove
        </Button>
      </span>
    </li>
  )
})

/** The hydration of a level that has its own: a share of a flour that drinks more or less. */
function OwnWater({ level, index }: Props) {
  const { change } = usePlanActions()
  const at = level.changes?.findIndex(({ what }) => what === 'hydration') ?? -1
  const water = level.changes?.[at]
  if (water?.what !== 'hydration') return null
  return (
    <PlanNumber
      field={`level/${level.id}/water`}
      path={`/levels/${index}/changes/${at}/percent`}
      label={`Hydration of level ${level.label}`}
      hideLabel
      unit="% water"
      value={water.percent}
      check={percentCheck}
      onValue={(percent) =>
        change((plan) => withLevelWaters(plan, [{ levelId: level.id, percent }]))
      }
    />
  )
}

/** Marks a level as the baker's usual; at most one is. */
export function ControlMark({ level }: { level: Level }) {
  const { change } = usePlanActions()
  return (
    <label className={styles.control}>
      <input
        type="checkbox"
        checked={level.control}
        onChange={() => change((plan) => withControl(plan, level.id))}
      />
      usual
    </label>
  )
}
