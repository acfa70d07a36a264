import { eventsOfSession } from '@/core/session/effective-events.ts'
import { failuresOf } from '@/core/session/failures.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { failureText } from '@/core/wording/bench/failure-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import type { ReportSection } from './report-block.ts'

/** Every failure by session and level: an answer in itself, never a silent gap. */
export function failuresSection(whole: WholeTrial): ReportSection {
  const rows = whole.sessions
    .toSorted((a, b) => a.number - b.number)
    .flatMap((session) => {
      const plan = planOfSession(whole, session)
      return failuresOf(session, eventsOfSession(whole.events, session.id)).map((failure) => {
        const batch = session.batches.find(({ id }) => id === failure.batchId)
        const piece = session.pieces.find(({ id }) => failure.pieceIds.includes(id))
        const level = plan.levels.find(({ id }) => id === (piece?.levelId ?? batch?.levelId))
        return [
          String(session.number),
          batch?.letter ?? '–',
          level ? levelText(level, plan.factor.unitOfMeasure) : '–',
          failureText(failure.what),
          failure.pieceIds.length > 1 ? `${failure.pieceIds.length} pieces` : 'one piece',
          failure.note ?? '',
        ]
      })
    })
  return {
    id: 'failures',
    title: 'Failures',
    blocks: [
      rows.length === 0
        ? { kind: 'text', text: 'None was logged.' }
        : {
            kind: 'table',
            caption: 'What failed',
            head: ['Session', 'Batch', 'Level', 'What', 'How many', 'Note'],
            rows,
            figures: [true, false, false, false, false, false],
          },
    ],
  }
}
