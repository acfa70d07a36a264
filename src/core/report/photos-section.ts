import { eventsOfSession } from '@/core/session/effective-events.ts'
import { piecesAbout } from '@/core/session/line.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { CivilClock } from '@/core/wording/words/civil-time.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import type { ReportSection } from './report-block.ts'

/**
 * Which photos were taken, of what and when. The pictures themselves stay in the notebook and its backup, so that a report is
 * one and the same from the app and from a trial file. Nothing where none was taken.
 */
export function photosSection(whole: WholeTrial, clock: CivilClock): ReportSection[] {
  const rows = whole.sessions
    .toSorted((a, b) => a.number - b.number)
    .flatMap((session) => {
      const plan = planOfSession(whole, session)
      return eventsOfSession(whole.events, session.id).flatMap((event) => {
        if (event.kind !== 'photo') return []
        const batch = session.batches.find(({ id }) => id === event.about.id)
        const levelId = batch ? batch.levelId : piecesAbout(session, event.about)[0]?.levelId
        const level = plan.levels.find(({ id }) => id === levelId)
        const of = level ? levelText(level, plan.factor.unitOfMeasure) : (batch?.letter ?? '–')
        return [
          [
            String(session.number),
            clockTime(event.at, session.zone, clock),
            of,
            event.caption ?? '',
          ],
        ]
      })
    })
  if (rows.length === 0) return []
  const kept = 'The pictures are kept in the notebook, and travel in its backup.'
  return [
    {
      id: 'photos',
      title: 'Photos',
      blocks: [
        { kind: 'text', text: kept },
        {
          kind: 'table',
          caption: 'Photos taken',
          head: ['Session', 'At', 'Of', 'Caption'],
          rows,
          figures: [true, false, false, false],
        },
      ],
    },
  ]
}
