import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import { LevelRail } from '@/app/kit/rail/level-rail.tsx'
import type { RailLayout } from '@/app/kit/rail/rail-layout.ts'
import { StandingRail } from '@/app/kit/rail/standing-rail.tsx'
import { usePlanActions, usePlanPage, usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { useLettersOfOne } from '@/app/plan/page/use-letters.ts'
import { useServices } from '@/app/services/services.ts'
import { levelBetween } from '@/core/plan-edits/levels/level-between.ts'
import { atValue } from '@/core/plan-edits/levels/measured-level.ts'
import { steppedValue } from '@/core/plan-edits/levels/stepped-value.ts'
import { inLevel } from '@/core/plan-edits/parts/in-part.ts'
import styles from './plan-rail.module.css'
import { useDraggedTab } from './use-dragged-tab.ts'

/**
 * The rail where its levels are set: a press lights a level, a second press leads to its field, dragging a tab or the up and
 * down keys move it, and a + in each gap adds one there.
 */
export function PlanRail() {
  const levels = usePlanPage((page) => page.calmLevels)
  const factor = usePlanPage((page) => page.plan.factor)
  const letters = useLettersOfOne()
  const { levelId, pick } = useCurrentLevel()
  const { change, jumpTo } = usePlanActions()
  const store = usePlanStore()
  const move = (id: string, value: number) =>
    change((plan) => inLevel(plan, id, (each) => atValue(each, value)))
  const dragging = useDraggedTab(levels, move)
  if (levels.length === 0) return null
  const press = (pressed: string) => {
    if (dragging.justDragged()) return
    if (pressed !== levelId) return pick(pressed)
    const { plan } = store.getState()
    const index = plan.levels.findIndex(({ id }) => id === pressed)
    jumpTo(`/levels/${index}/${factor.acts.on === 'choice' ? 'label' : 'value'}`)
  }
  return (
    <StandingRail>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys and drags of the tabs inside, which are buttons */}
      <div
        {...dragging.handlers}
        onKeyDown={(event) => {
          const by = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0
          const level = levels.find(({ id }) => id === levelId)
          if (by === 0 || !level || level.value === null) return
          event.preventDefault()
          move(level.id, steppedValue(level.value, by, levels))
        }}
      >
        <LevelRail
          levels={levels}
          factorName={factor.name}
          unitOfMeasure={factor.unitOfMeasure}
          letters={letters.size > 0 ? letters : undefined}
          currentLevelId={levelId}
          onPick={press}
          over={(layout, railPixels) => <Gaps layout={layout} railPixels={railPixels} />}
        />
      </div>
    </StandingRail>
  )
}

const leastGapPixels = 44

/** A + in each gap that has room for it. */
function Gaps({ layout, railPixels }: { layout: RailLayout; railPixels: number }) {
  const { newId } = useServices()
  const { change } = usePlanActions()
  if (!layout.axis.ordered || layout.twoSided || railPixels < 480) return null
  return layout.tabs.slice(1).map((tab, index) => {
    const before = layout.tabs[index]
    if (!before) return null
    const from = before.leftPixels + before.widthPixels
    if (tab.leftPixels - from < leastGapPixels) return null
    return (
      <button
        key={tab.levelId}
        type="button"
        className={styles.add}
        style={{ insetInlineStart: (from + tab.leftPixels) / 2 }}
        aria-label={`Add a level between ${before.words} and ${tab.words}`}
        onClick={() => change((plan) => levelBetween(plan, before.levelId, tab.levelId, newId()))}
      >
        <span>+</span>
      </button>
    )
  })
}
