import { placesOf } from '@/core/seal/blind/ranked-codes.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { rankingQuestion } from '@/core/wording/tasting/ranking-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { moment, number, text, time, whole } from './archive-columns.ts'
import type { ArchiveTable } from './archive-table.ts'

/** The orders that count, a row a sample; no table where nothing was ranked. */
export function ordersTable(trial: WholeTrial): ArchiveTable[] {
  const rows = effectiveBallots(trial.ballots).flatMap((ballot) => {
    const session = trial.sessions.find(({ id }) => id === ballot.sessionId)
    if (!session || ballot.about.kind !== 'ranking' || !ballot.ranked) return []
    const plan = planOfSession(trial, session)
    return [...placesOf(ballot.ranked)].map(([code, place]) => {
      const serving = session.dealt.servings.find((each) => each.code === code)
      const piece = session.pieces.find(({ id }) => id === serving?.pieceId)
      const level = plan.levels.find(({ id }) => id === piece?.levelId)
      return [
        ...[session.number, tasterName(ballot.tasterId, trial.kitchen), moment(ballot.at)],
        ...[rankingQuestion(plan.atTable?.ranking ?? {}), code],
        ...[level ? levelText(level, plan.factor.unitOfMeasure) : '', place],
      ]
    })
  })
  if (rows.length === 0) return []
  return [
    {
      file: 'orders.csv',
      about: 'the place of one sample in one taster’s order',
      columns: [
        whole('session', 'its number'),
        text('taster', 'initials or code'),
        time('at', 'when it was sealed'),
        text('asked', 'the question'),
        text('code', 'the serving code'),
        text('level', 'the level, with its unit or by name'),
        number(
          'place',
          '1 is first; those that share a place have the mean of the places they take up',
        ),
      ],
      rows,
    },
  ]
}
