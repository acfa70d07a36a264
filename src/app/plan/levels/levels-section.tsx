import { Button } from '@/app/kit/press/button.tsx'
import { RoomFor } from '@/app/plan/field/room-for.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { useServices } from '@/app/services/services.ts'
import { withAnotherLevel } from '@/core/plan-edits/levels/measured-level.ts'
import { mostLevels } from '@/core/trial/levels-between.ts'
import { usualRangeHint } from '@/core/wording/plan/usual-range-hint.ts'
import { LevelRow } from './level-row.tsx'
import { LevelSeries } from './level-series.tsx'
import styles from './levels-section.module.css'
import { OptionRow } from './option-row.tsx'

/** The levels: typed one by one or as a series; one of them the control. */
export function LevelsSection() {
  const levels = usePlanPage((page) => page.plan.levels)
  const factor = usePlanPage((page) => page.plan.factor)
  const { change } = usePlanActions()
  const { newId } = useServices()
  const choice = factor.acts.on === 'choice'
  const hint = usualRangeHint(factor.acts.on)
  const add = () => change((plan) => withAnotherLevel(plan, newId()))
  return (
    <PlanSection id="plan-levels" aside={`${levels.length}, of 2 to ${mostLevels}`}>
      {levels.length > 0 ? null : (
        <p>
          {choice ? 'Name the options side by side.' : 'Type the first level, or make a series.'}
        </p>
      )}
      {hint ? <p className={styles.hint}>{hint}</p> : null}
      {choice ? null : <LevelSeries />}
      <ol className={styles.levels}>
        {levels.map((level, index) =>
          choice ? (
            <OptionRow key={level.id} level={level} index={index} />
          ) : (
            <LevelRow key={level.id} level={level} index={index} />
          ),
        )}
      </ol>
      <TroubleHere at="/levels" />
      <div>
        <RoomFor part="levels" count={levels.length}>
          <Button onPress={add}>{choice ? 'Add an option' : 'Add a level'}</Button>
        </RoomFor>
      </div>
    </PlanSection>
  )
}
