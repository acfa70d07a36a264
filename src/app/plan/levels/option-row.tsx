import { memo } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { visibleName } from '@/app/plan/field/field-checks.ts'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanActions } from '@/app/plan/page/plan-page-context.ts'
import { useTakeOut } from '@/app/plan/page/use-take-out.ts'
import { inLevel } from '@/core/plan-edits/parts/in-part.ts'
import { takeOutLevel } from '@/core/plan-edits/take-out/take-out.ts'
import type { Level } from '@/core/trial/level.ts'
import { ControlMark } from './level-row.tsx'
import styles from './levels-section.module.css'
import { OptionChanges } from './option-changes.tsx'

interface Props {
  level: Level
  index: number
}

const namesOption = visibleName("the option's name")

/** One option of a choice: its name, what it swaps, whether it is the control. */
export const OptionRow = memo(function OptionRow({ level, index }: Props) {
  const { change } = usePlanActions()
  const takeOut = useTakeOut()
  return (
    <li className={styles.level}>
      <PlanText
        field={`level/${level.id}/label`}
        path={`/levels/${index}/label`}
        label={`Option ${index + 1}`}
        hideLabel
        value={level.label}
        check={namesOption}
        onValue={(label) =>
          change((plan) => inLevel(plan, level.id, (each) => ({ ...each, label })))
        }
      />
      <PlanText
        field={`level/${level.id}/short`}
        path={`/levels/${index}/shortLabel`}
        label={`Short name of ${level.label}, for a phone's rail`}
        hideLabel
        placeholder="short name"
        value={level.shortLabel ?? ''}
        maxLength={24}
        onValue={(text) =>
          change((plan) =>
            inLevel(plan, level.id, ({ shortLabel: _, ...each }) =>
              /\S/.test(text) ? { ...each, shortLabel: text } : each,
            ),
          )
        }
      />
      <ControlMark level={level} />
      <span className={styles.end}>
        <Button
          kind="quiet"
          label={`Remove option ${level.label}`}
          onPress={() => takeOut((plan) => takeOutLevel(plan, level.id))}
        >
          Remove
        </Button>
      </span>
      <OptionChanges level={level} index={index} />
    </li>
  )
})
