import { SelectField } from '@/app/kit/field/select-field.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { withAtTable } from '@/core/plan-edits/people/at-table.ts'
import type { RankingAsked } from '@/core/trial/at-table.ts'
import { usualRankingQuestion } from '@/core/wording/tasting/ranking-text.ts'

const waysToRank = [
  { value: 'none', label: 'not asked' },
  { value: 'apart', label: 'in order, each in a place of its own' },
  { value: 'shared', label: 'in order, places may be shared' },
]

/** Whether tasters put the samples in one order at the end, with or without places to share, and in what words it is asked. */
export function RankingFields() {
  const ranking = usePlanPage((page) => page.plan.atTable?.ranking)
  const { change } = usePlanActions()
  const set = (next: RankingAsked | null) => change((plan) => withAtTable(plan, { ranking: next }))
  return (
    <>
      <SelectField
        label="Rank the samples at the end"
        hint="Hot servings are ranked from memory; those that rested stay at hand. More than six are hard to put in order (common practice)."
        value={ranking === undefined ? 'none' : ranking.ties ? 'shared' : 'apart'}
        options={waysToRank}
        onValue={(way) => set(way === 'none' ? null : { ...ranking, ties: way === 'shared' })}
      />
      {ranking ? (
        <PlanText
          field="ranking/asks"
          path="/atTable/ranking/asks"
          label="Asked in these words"
          hint={`Say which end comes first, and nothing of the levels. Left empty: “${usualRankingQuestion}”`}
          value={ranking.asks ?? ''}
          maxLength={200}
          onValue={(text) =>
            set(text.trim() === '' ? { ties: ranking.ties } : { ...ranking, asks: text })
          }
        />
      ) : null}
      <TroubleHere at="/atTable/ranking/asks" />
    </>
  )
}
