import { decimalText } from '@/core/units/number-text.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { workedInSession } from '@/core/whole-trial/worked-in-session.ts'
import type { CivilClock } from '@/core/wording/words/civil-time.ts'
import { dateText } from '@/core/wording/words/date-text.ts'
import { levelNameText } from '@/core/wording/words/level-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import type { ReportBlock, ReportSection } from './report-block.ts'

/** What happened: each session with its day, and the levels as planned, as weighed and as handled. */
export function happenedSection(whole: WholeTrial, clock: CivilClock): ReportSection {
  const sessions = whole.sessions.toSorted((a, b) => a.number - b.number)
  const items = sessions.map((session) => {
    const planned = session.number <= session.plannedSessions
    return `Session ${session.number}, ${dateText(session.createdAt, session.zone, clock)}: ${countText(session.batches.length, 'batch', 'batches')}, ${countText(session.dealt.flights.length, 'flight')}${planned ? '' : ', added after the planned ones'}.`
  })
  const blocks: ReportBlock[] = [
    items.length === 0
      ? { kind: 'text', text: 'Nothing has been made yet.' }
      : { kind: 'list', items },
  ]
  const table = sessions.flatMap((session) => levelRows(whole, session))
  if (table.length > 0) {
    const moist = table.some(({ atFourteen }) => atFourteen !== null)
    blocks.push({
      kind: 'table',
      caption: 'The factor as planned, as weighed and as handled',
      head: [
        ...['Session', 'Batch', 'Planned', 'Weighed', 'Handled'],
        ...(moist ? ['Weighed, at 14 % flour moisture'] : []),
      ],
      rows: table.map(({ cells, atFourteen }) =>
        moist ? [...cells, numberOf(atFourteen)] : cells,
      ),
      figures: [true, false, true, true, true, ...(moist ? [true] : [])],
    })
  }
  return { id: 'happened', title: 'What happened', blocks }
}

function levelRows(whole: WholeTrial, session: WholeTrial['sessions'][number]) {
  const plan = planOfSession(whole, session)
  const letter = new Map(session.batches.map((batch) => [batch.id, batch.letter]))
  return workedInSession(whole, session)
    .filter(({ weighed, handled }) => weighed !== null || handled !== null)
    .map(({ batchId, planned, weighed, handled, atFourteen }) => ({
      atFourteen,
      cells: [
        String(session.number),
        letter.get(batchId) ?? '',
        planned === null ? '–' : levelNameText({ name: planned }, plan.factor.unitOfMeasure),
        numberOf(weighed),
        numberOf(handled),
      ],
    }))
}

function numberOf(value: number | null): string {
  return value === null ? '–' : decimalText(value, 2)
}
