import { easeOfTrial } from '@/core/findings/best/ease-of-trial.ts'
import { handledLevels } from '@/core/findings/best/handled-levels.ts'
import { rankingsOfTrial } from '@/core/findings/judged/rankings-of-trial.ts'
import { tellApartOfTrial } from '@/core/findings/judged/tell-apart-of-trial.ts'
import { earlyLooks, plannedSessionsOf } from '@/core/seal/looks.ts'
import { unitOf } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'
import { writtenFirst } from '@/core/trial/written-first.ts'
import { observations } from '@/core/whole-trial/observations.ts'
import type { Observation, Observed } from '@/core/whole-trial/observed.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { toldTrial } from '@/core/whole-trial/told-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { levelsOfTrial, type TrialLevels } from './levels-of-trial.ts'
import type { ScoreResponse, ScoreRow, ScoreTable, WrittenForScores } from './score-table.ts'
import { toldApart } from './told-apart.ts'

export type TrialScores = { ok: true; scores: ScoreTable } | { ok: false; reason: 'still-sealed' }

/**
 * The scores of a trial: what tasters and baker answered, by session, flight, batch, piece, level and taster, the main
 * response first. Cells that a failure left empty are counted, never filled. Refused while codes are sealed, unless
 * `unsealed` says that the one who asks knows of the look. Tasters go by their ids.
 */
export function scoresOfTrial(all: WholeTrial, asked: { unsealed: boolean }): TrialScores {
  const observed = observations(all, asked)
  if (!observed.ok) return { ok: false, reason: 'still-sealed' }
  const whole = toldTrial(all)
  const plan = planInForce(whole)
  const levels = levelsOfTrial(whole, plan)
  const responses = mainFirst(plan)
  const names = toldApart(responses.map(({ name }) => name))
  return {
    ok: true,
    scores: {
      factor: {
        kind: plan.factor.acts.on,
        name: plan.factor.name,
        unitOfMeasure: plan.factor.unitOfMeasure,
        ordered: levels.ordered,
        splitsAt: plan.factor.splitsAt,
      },
      unit: unitOf(plan),
      levels: levels.list,
      responses: responses.map((response, at) =>
        scoreResponse(response, names[at] ?? '', observed),
      ),
      rows: rowsOf(observed.rows, responses, levels, handledLevels(whole)),
      expectation: plan.expectation,
      written: writtenForScores(whole, plan, levels),
      knowing: plan.tasters.flatMap(({ tasterId, knows }) => (knows ? [tasterId] : [])),
      tellApart: tellApartOfTrial(whole, levels),
      rankings: rankingsOfTrial(whole, levels),
      ease: easeOfTrial(whole, plan, levels, observed.rows),
    },
  }
}

/** The most sessions are those planned at the first mix, unless more were allowed for; an early look counts, planned or not. */
function writtenForScores(whole: WholeTrial, plan: Plan, levels: TrialLevels): WrittenForScores {
  const { hopedLevelId, mostSessions, looks, againstUsual } = writtenFirst(plan)
  const planned = plannedSessionsOf(whole.sessions) || plan.plannedSessions
  const hoped = hopedLevelId === null ? -1 : levels.indexOf(hopedLevelId, null)
  return {
    hoped: hoped < 0 ? null : hoped,
    mostSessions: Math.max(planned, mostSessions ?? 0),
    early: looks || earlyLooks(whole).length > 0 || (mostSessions ?? 0) > planned,
    againstUsual,
  }
}

function rowsOf(
  seen: readonly Observation[],
  responses: readonly Response[],
  levels: TrialLevels,
  handled: (batchId: string, levelId: string) => number | null,
): ScoreRow[] {
  const place = new Map(responses.map((response, index) => [response.id, index]))
  const rows = new Map<string, ScoreRow & { values: (number | null)[] }>()
  for (const one of seen) {
    const at = place.get(one.responseId)
    const level = levels.indexOf(one.levelId, one.sessionId)
    if (at === undefined || level < 0) continue
    const { sessionId, flightId, batchId, pieceId, tasterId } = one
    const key = [sessionId, flightId, batchId, pieceId, level, tasterId].join('\u0000')
    const row = rows.get(key) ?? {
      session: sessionId,
      flight: `${sessionId}\u0000${flightId ?? ''}`,
      batch: batchId,
      piece: pieceId ?? batchId,
      level,
      taster: tasterId,
      position: one.position,
      minutes: one.minutesSinceOven,
      handled: handled(batchId, one.levelId),
      values: responses.map(() => null),
    }
    row.values[at] = one.value
    rows.set(key, row)
  }
  return [...rows.values()]
}

function scoreResponse(response: Response, name: string, observed: Observed): ScoreResponse {
  const failures = observed.gaps.filter(
    ({ responseId, because }) => responseId === response.id && !notFailures.has(because),
  ).length
  return {
    id: response.id,
    name,
    scale: response.scale.kind,
    better: response.better,
    margin: response.margin,
    failures,
  }
}

const notFailures: ReadonlySet<string> = new Set(['declined', 'left', 'no-answer', 'knows'])

function mainFirst(plan: Plan): Response[] {
  const main = plan.responses.filter(({ id }) => id === plan.mainResponseId)
  return [...main, ...plan.responses.filter(({ id }) => id !== plan.mainResponseId)]
}
