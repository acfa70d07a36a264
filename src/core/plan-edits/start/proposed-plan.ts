import type { Way } from '@/core/design/proposal/propose.ts'
import { withAnotherLevel } from '@/core/plan-edits/levels/measured-level.ts'
import { wideLevels } from '@/core/plan-edits/levels/wide-levels.ts'
import { inResponse, withSessions } from '@/core/plan-edits/parts/in-part.ts'
import { namingWhatStands } from '@/core/plan-edits/parts/what-stands.ts'
import { withBatchFor, withDoughs } from '@/core/plan-edits/pieces/with-doughs.ts'
import {
  withoutWrittenFirst,
  withWrittenFirst,
} from '@/core/plan-edits/start/with-written-first.ts'
import { pieceProblems } from '@/core/trial/piece-problems.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { withExpectation } from './expectation.ts'

/**
 * The plan made as a proposal says: its levels far apart, pieces, doughs and sessions, and what its chance rests on written down first: the
 * expectation, the level hoped to do as well, the margin. Tasters are named by who knows them. All of it can be changed before the first mix.
 */
export function proposedPlan(plan: Plan, way: Way, newId: () => string): Plan {
  const levelled = withProposedLevels(withoutWrittenFirst(plan), way, newId)
  const doughs = withDoughs(levelled, { doughs: way.unit === 'piece' ? 'one' : 'apart' })
  const pieces = withBatchFor(doughs, { ...doughs, flights: way.flights })
  const made = withEnoughFlour(withSessions(pieces, way.sessions))
  const main = made.responses.find(({ id }) => id === made.mainResponseId)
  const judged = main ? inResponse(made, main.id, (each) => ({ ...each, margin: way.size })) : made
  return hopingFor(judged, way)
}

/** Where pieces are told by their mass, a batch that holds them all. */
function withEnoughFlour(plan: Plan): Plan {
  const short = pieceProblems(plan).find(({ reason }) => reason === 'pieces-outweigh-dough')
  if (short?.reason !== 'pieces-outweigh-dough') return plan
  const batchSize = { by: 'flour', flourGrams: short.leastFlourGrams } as const
  return { ...plan, formula: { ...plan.formula, batchSize } }
}

function withProposedLevels(plan: Plan, { levels: count, hoped }: Way, newId: () => string): Plan {
  if (plan.factor.acts.on === 'choice') {
    let next = { ...plan, levels: plan.levels.slice(0, count) }
    while (next.levels.length < count) next = withAnotherLevel(next, newId())
    return namingWhatStands(next)
  }
  const levels = wideLevels(plan, count, hoped === 'as-good', newId)
  return levels.length === count ? namingWhatStands({ ...plan, levels }) : plan
}

function hopingFor(plan: Plan, { hoped }: Way): Plan {
  switch (hoped) {
    case 'best-inside':
      return withExpectation(plan, { direction: 'best-inside', bestGuess: null })
    case 'rise':
      return withExpectation(plan, { direction: 'rises', bestGuess: null })
    case 'as-good': {
      const [easiest] = plan.levels
      const plain = { ...plan, expectation: null }
      return easiest ? withWrittenFirst(plain, { hopedLevelId: easiest.id }) : plain
    }
    case 'pair':
      return { ...plan, expectation: null }
  }
}
