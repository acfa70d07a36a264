import { tellApartStatistics } from '@/core/design/tell-apart-statistics.ts'
import type { Discrimination } from '@/core/findings/findings-document.ts'
import { absent } from '@/core/findings/reason.ts'
import type { TellApartCount } from '@/core/findings/table/score-table.ts'
import { tellApart, tellApartByPerson } from '@/core/statistics/discrimination/tell-apart.ts'

/**
 * Can people tell the pieces apart? Exact binomial over all answers for each test, one-sided for triangle and duo-trio, two-sided for a paired
 * comparison: if nobody can, every answer is a guess of its own. Share of discriminators and d' by person, each counting once however often
 * they answered, with exact 95 % limits. Tests nobody answered are left out.
 */
export function discriminationsOf(counts: readonly TellApartCount[]): Discrimination[] {
  return counts.flatMap(({ test, between, n, correct, people, sessions }) => {
    const { test: name, sides } = tellApartStatistics[test]
    const found = tellApart(name, correct, n, sides)
    if (!found.ok) return []
    const { discriminators, dPrime } = tellApartByPerson(name, people)
    return [
      {
        test,
        between,
        n,
        correct,
        people: people.length,
        sessions,
        p: found.p,
        discriminators: {
          share: discriminators.estimate,
          low: discriminators.low,
          high: discriminators.high,
        },
        dPrime: {
          estimate: bounded(dPrime.estimate),
          low: bounded(dPrime.low),
          high: bounded(dPrime.high),
        },
      },
    ]
  })
}

function bounded(value: number) {
  return Number.isFinite(value) ? value : absent('never-reached')
}
