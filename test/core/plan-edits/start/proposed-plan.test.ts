import { describe, expect, it } from 'vitest'
import { usuallyHoped } from '@/core/design/proposal/hoped-to-show.ts'
import { usualHowMuch } from '@/core/design/proposal/how-much.ts'
import { propose } from '@/core/design/proposal/propose.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { factorKinds } from '@/core/plan-edits/factor/factor-kinds.ts'
import { proposedPlan } from '@/core/plan-edits/start/proposed-plan.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { chanceOfWay, otherWayText, proposalSentence } from '@/core/wording/plan/proposal-text.ts'
import { countedIds } from '../../made-plan.ts'

const ids = countedIds()
const started = () => startingPlan({ newId: ids, at: 1000, zone: 'Europe/Zurich' })

function proposed(kind: FactorKind, howMuch: keyof typeof usualHowMuch = 'two-fridays') {
  const plan = withFactorKind(started(), kind, ids)
  const proposal = propose({
    howMuch: usualHowMuch[howMuch],
    hoped: usuallyHoped(kind),
    actsLate: plan.factor.splitsAt !== 'mix',
    ...(kind === 'choice' ? { levels: plan.levels.length } : {}),
  })
  return { proposal, plan: proposedPlan(plan, proposal.way, ids) }
}

describe('a plan made as proposed', () => {
  it('stands wide around the usual water, and writes first what its chance rests on', () => {
    const { plan, proposal } = proposed('hydration')
    expect(plan.levels.map(({ value, control }) => [value, control])).toEqual([
      [62, false],
      [70, true],
      [78, false],
    ])
    expect(plan).toMatchObject({ flights: 2, plannedSessions: 2, doughs: 'apart' })
    expect(plan.expectation).toEqual({ direction: 'best-inside', bestGuess: null })
    expect(plan.responses[0]?.margin).toBe(2)
    expect(proposalSentence(plan, proposal.way)).toBe(
      '62, 70 and 78 %, two pieces of each, on two days; seven people tasting blind.',
    )
    expect(chanceOfWay(proposal.way)).toEqual({
      inHundred: 39,
      words:
        'in 100 such trials show that the best lies in between, if it is liked 2 points better than both ends.',
    })
    expect(proposal.others.map((other) => otherWayText(other, proposal))).toEqual([
      { what: 'A third day', chance: '80 in 100' },
      {
        what: 'Only: do you taste it at all?',
        chance: 'first or last, a set to tell apart: 69 in 100, if half can',
      },
    ])
  })

  it('asks how little salt will do, down from the usual, and names the least', () => {
    const { plan } = proposed('salt')
    const values = plan.levels.map(({ value }) => value ?? 0)
    expect(values.at(-1)).toBe(2)
    expect(plan.levels.at(-1)?.control).toBe(true)
    expect(plan.writtenFirst?.hopedLevelId).toBe(plan.levels[0]?.id)
    expect(values.every((value) => value > 0)).toBe(true)
  })

  it('says zero for one evening alone, with what comes first all the same', () => {
    const { proposal } = proposed('hydration', 'one-evening-alone')
    expect(chanceOfWay(proposal.way)).toEqual({
      inHundred: 0,
      words:
        'in 100 such days can show it: one day never does. If you like one level 2 points better than the others, it comes first in 86; if all are alike, one comes first all the same.',
    })
  })

  it.each(factorKinds.map(({ kind }) => kind))('is whole for %s in every way', (kind) => {
    for (const howMuch of Object.keys(usualHowMuch) as (keyof typeof usualHowMuch)[]) {
      const { plan, proposal } = proposed(kind, howMuch)
      const before = planProblems(withFactorKind(started(), kind, ids), []).map(({ path }) => path)
      const path = (each: { path: string }) => each.path
      expect(
        planProblems(plan, [])
          .map(path)
          .filter((each) => !before.includes(each)),
      ).toEqual([])
      if (kind === 'own') continue
      expect(plan.levels).toHaveLength(proposal.way.levels)
      expect(new Set(plan.levels.map(({ label }) => label)).size).toBe(plan.levels.length)
      if (kind !== 'choice') expect(plan.levels.filter(({ control }) => control)).toHaveLength(1)
    }
  })
})
