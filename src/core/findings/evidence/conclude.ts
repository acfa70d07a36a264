import { type Absent, absent, isPresent } from '@/core/findings/reason.ts'
import type { Cells } from '@/core/findings/rungs/cells.ts'
import { decisiveRung, type FittedRungs } from '@/core/findings/rungs/decisive-rung.ts'
import type { FittedRung } from '@/core/findings/rungs/rung-of.ts'
import type { ScoreResponse, ScoreTable } from '@/core/findings/table/score-table.ts'
import { allowanceOf } from './allowance.ts'
import { askedOf } from './asked-of.ts'
import { besideLevel } from './beside.ts'
import { cautionOf } from './caution-of.ts'
import type { Conclusion } from './conclusion-shape.ts'
import { endingOf, nextOf } from './ending-of.ts'
import { expectationOutcome } from './expectation-outcome.ts'
import { hangsOn, notLookedAt } from './hangs-on.ts'
import { lacksOf } from './judged-levels.ts'
import { leanOf } from './lean-of.ts'
import { nearOf } from './near-of.ts'
import { oneEveningOf } from './one-evening.ts'
import { type VerdictAsked, verdictOf } from './verdict-of.ts'
import { wouldHaveShown } from './would-have-shown.ts'

/** The conclusion of the response at `index`: what the rules of evidence allow to be said, from the fits of its rungs. */
export function conclude(
  scores: ScoreTable,
  index: number,
  cells: Cells,
  fitted: FittedRungs,
): Conclusion {
  const response = scores.responses[index]
  if (!response) throw new RangeError(`the table has no response ${index}`)
  const rung = decisiveRung(fitted)
  const found = rung === null ? null : fitted[rung]
  // One mouth on one evening gives an order of liking: no level is called as good, whatever its doughs say.
  const oneEvening = oneEveningOf(scores, index, cells, response)
  if (rung === null || found === null || !isPresent(found) || oneEvening)
    return nothing(scores, index, fitted, cells, response)
  const { present } = found
  const asked = askedOf(scores, index, present.control !== null)
  const { written } = scores
  const allowance = allowanceOf(present.levels.length, cells.sessions, {
    most: written?.mostSessions ?? null,
    early: written?.early ?? false,
  })
  const by: VerdictAsked = {
    ...{ rung, asked, response, allowance },
    hoped: index === 0 ? (written?.hoped ?? null) : null,
  }
  const judgeable = { ...found, best: found.rung.best }
  const { question, p, ...verdict } = verdictOf(scores, judgeable, by)
  const { shown, tooSmall } = verdict
  const repeats = scores.replicated && rung === 'factor' ? fewestRepeats(found) : null
  const freshness = besideLevel(scores, cells, 'minutes', rung, found)
  const order = besideLevel(scores, cells, 'position', rung, found)
  const caution = cautionOf(shown, freshness, order)
  const known = { rung, ...verdict, caution, allowance }
  const ending = endingOf(scores, known)
  const settled = ending.kind === 'adopt' || ending.kind === 'hold'
  return {
    ...known,
    main: index === 0,
    asked,
    sessions: cells.sessions,
    repeats,
    byTasters: cells.tasters.length > 0,
    better: response.better.is,
    usual: present.control === null ? null : (present.levels[present.control]?.id ?? null),
    near: nearOf(scores, cells, fitted, response),
    oneEvening: null,
    lean: question && shown.length === 0 ? leanOf(question, p) : null,
    wouldShow: question && shown.length === 0 ? wouldHaveShown(question) : null,
    freshness,
    order,
    hangs: question && index === 0 ? hangsOn(scores, cells, found, by, caution) : notLookedAt,
    // What freshness or order may have done bears no expectation out.
    expectation:
      caution && asked.expected !== null
        ? 'not-settled'
        : expectationOutcome(asked, shown, tooSmall, response.better),
    ending,
    next: nextOf({ ending, shown, rung, caution, better: response.better.is }),
    lacks:
      settled && rung === 'factor'
        ? null
        : lacksOf({ ...by, found: judgeable }, rung, repeats ?? cells.sessions, repeats !== null),
  }
}

/** How often the level made least often was made. */
function fewestRepeats({ rows }: FittedRung): number {
  const counts = new Array<number>(rows.levelCount).fill(0)
  for (let row = 0; row < rows.level.length; row += 1) {
    const level = rows.level[row] as number
    counts[level] = (counts[level] as number) + 1
  }
  return Math.min(...counts)
}

/** No rung answers: nothing is shown, and why stands where the answers would. */
function nothing(
  scores: ScoreTable,
  index: number,
  fitted: FittedRungs,
  cells: Cells,
  response: ScoreResponse,
): Conclusion {
  const none: Absent = isPresent(fitted.factor) ? absent('no-scores') : fitted.factor
  const asked = askedOf(scores, index, false)
  return {
    ...{ sessions: cells.sessions, repeats: null, byTasters: cells.tasters.length > 0 },
    ...{ better: response.better.is, usual: null },
    ...{ rung: null, main: index === 0, asked, allowance: null, near: null, shown: [] },
    oneEvening: oneEveningOf(scores, index, cells, response),
    ...{ lean: null, wouldShow: null, tooSmall: none, asGood: none, place: none },
    ...{ freshness: none, order: none, caution: null, hangs: notLookedAt },
    expectation: asked.expected === null ? 'none' : 'not-settled',
    ending: { kind: 'stay', level: null, why: null },
    next: ['repeat'],
    lacks: null,
  }
}
