import { describe, expect, it } from 'vitest'
import { usuallyHoped } from '@/core/design/proposal/hoped-to-show.ts'
import { usualHowMuch } from '@/core/design/proposal/how-much.ts'
import { propose } from '@/core/design/proposal/propose.ts'
import { hydrationPercent } from '@/core/formula/hydration.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { planOfUsualBread } from '@/core/plan-edits/start/plan-of-usual-bread.ts'
import { proposedPlan } from '@/core/plan-edits/start/proposed-plan.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import { usualBreads } from '@/core/plan-edits/start/usual-breads.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { type Plan, planShape } from '@/core/trial/plan-record.ts'
import { usualBreadText } from '@/core/wording/plan/usual-bread-text.ts'
import { countedIds } from '../../made-plan.ts'

const ids = countedIds()
const started = () => startingPlan({ newId: ids, at: 1000, zone: 'Europe/Zurich' })
/** Reasons beyond those that the plain starting plan has too: nobody is named, nothing expected, no kitchen yet. */
const plain = new Set(planProblems(started(), []).map(({ reason }) => reason))
const troubles = (plan: Plan) => planProblems(plan, []).filter(({ reason }) => !plain.has(reason))
const kinds: FactorKind[] = ['hydration', 'salt', 'yeast', 'proof-time', 'bake-temperature']

describe('a usual bread', () => {
  it.each(usualBreads.map((bread) => [bread.key, bread] as const))(
    '%s makes a whole plan, as it is and for what the start offers to change',
    (_, bread) => {
      const plan = planOfUsualBread(started(), bread, ids)
      expect(planShape.parse(plan)).toEqual(plan)
      expect(troubles(plan)).toEqual([])
      const said = bread.lines.find(({ kind }) => kind === 'water')?.percent
      expect(hydrationPercent(plan.formula)).toBeCloseTo(said ?? 0, 9)
      expect(plan.levels.find(({ control }) => control)?.value).toBe(said)
      const flours = bread.lines.filter(({ kind }) => kind === 'flour')
      expect(flours.reduce((sum, { percent }) => sum + percent, 0)).toBe(100)
      for (const kind of kinds)
        for (const howMuch of Object.values(usualHowMuch)) {
          const changed = withFactorKind(plan, kind, ids)
          const actsLate = changed.factor.splitsAt !== 'mix'
          const { way } = propose({ howMuch, hoped: usuallyHoped(kind), actsLate })
          const made = proposedPlan(changed, way, ids)
          expect([kind, troubles(made)]).toEqual([kind, []])
          expect(made.question).toContain(bread.name)
          expect(made.levels).toHaveLength(way.levels)
        }
    },
  )

  it('keeps its own method, and is served as it is eaten', () => {
    const [flatbread, rye] = ['flatbread', 'rye-tin'].map((wanted) => {
      const bread = usualBreads.find(({ key }) => key === wanted)
      if (!bread) throw new Error(`no usual bread ${wanted}`)
      return planOfUsualBread(started(), bread, ids)
    })
    expect(flatbread).toMatchObject({ serving: 'as-baked', warmUpPiece: true })
    expect(flatbread?.steps.map(({ kind }) => kind)).toContain('open')
    expect(rye).toMatchObject({ serving: 'rested', warmUpPiece: false })
    expect(rye?.formula.preferments).toMatchObject([{ kind: 'starter', flourSharePercent: 35 }])
  })

  it('says its percentages in one line', () => {
    const said = usualBreads.map(usualBreadText)
    expect(said[0]).toBe('Water 62, salt 2, instant yeast 1, butter 3 % of flour')
    expect(said[1]).toBe('Water 72, salt 2 % of flour, 10 % of the flour in a levain')
  })
})
