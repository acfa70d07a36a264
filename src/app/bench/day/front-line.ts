import type { AgendaItem } from '@/core/session/agenda.ts'
import { doughsInWork } from '@/core/session/line.ts'
import type { Session } from '@/core/session/session-record.ts'
import { runSeconds } from '@/core/session/step-runs.ts'

export interface FrontLine {
  item: AgendaItem | null
  /** The dough or piece that entries are about. */
  unit: { kind: 'batch' | 'piece'; id: string } | null
}

/**
 * What stands in front at the bench: the very dough or piece that was brought there; else the level picked on the rail, with
 * its soonest step; without a pick, what is due out of the oven, else the dough that hands are on, else what is due, else the
 * dough whose work by hand is over by the plan and not said to be done, else whatever is due soonest. A level whose line is through still takes entries, about its dough.
 */
export function frontLine(
  session: Session,
  items: readonly AgendaItem[],
  pickedLevelId: string | null,
  pickedUnit: FrontLine['unit'],
): FrontLine {
  const own = items.find(
    ({ unit, levelId }) => unit.id === pickedUnit?.id && levelId === pickedLevelId,
  )
  if (own) return { item: own, unit: own.unit }
  const picked = pickedLevelId !== null && lineOfLevel(session, pickedLevelId)
  if (!picked) {
    const item =
      items.find(dueOut) ??
      items.find(handsOn) ??
      items.find(isDue) ??
      items.find(({ handsOn: working }) => working) ??
      items[0] ??
      null
    return { item, unit: item?.unit ?? firstBatch(session) }
  }
  const item =
    items.find((each) => each.levelId === pickedLevelId) ??
    items.find((each) => each.levelId === null) ??
    null
  return { item, unit: item?.unit ?? picked }
}

/** What the screen makes of the items, apart from the seconds that pass: another text, and something stands elsewhere. */
export function lineUp(items: readonly AgendaItem[]): string {
  return items
    .map((item) => {
      const { unit, step, repeat, do: what, dueAt } = item
      return [
        unit.id,
        step.id,
        repeat,
        what,
        item.handsOn,
        dueAt,
        dueOut(item),
        handsOn(item),
        isDue(item),
      ].join(' ')
    })
    .join('\n')
}

/** From here on a step's due moment reads "now". */
const nearlySeconds = 30

const isDue = ({ lateSeconds }: AgendaItem) => (lateSeconds ?? -Infinity) >= -nearlySeconds

/** Whether something in the oven is due to come out, or nearly: while it burns nothing else is next. */
function dueOut(item: AgendaItem): boolean {
  return item.do === 'end' && item.step.kind === 'bake' && isDue(item)
}

/** So long after its work is over by the plan a dough stays under the hands: one press says it done and goes to what is due. */
const graceSeconds = 60

/** Whether a step runs and its work by hand is not over by the plan: until then the next thing to do is this one. */
function handsOn({ do: what, step, dueAt, lateSeconds, handsOn: working }: AgendaItem): boolean {
  if (!working && step.waitSeconds > 0 && step.endsBy.by === 'clock') return false
  if (what !== 'end' || step.kind === 'bake' || dueAt === null || lateSeconds === null) return false
  return runSeconds(step) + lateSeconds < step.handsSeconds + (working ? graceSeconds : 0)
}

function lineOfLevel(session: Session, levelId: string): FrontLine['unit'] {
  const batch = doughsInWork(session).find((each) => each.levelId === levelId)
  if (batch) return { kind: 'batch', id: batch.id }
  const piece = session.pieces.find((each) => each.levelId === levelId)
  return piece ? { kind: 'piece', id: piece.id } : null
}

function firstBatch(session: Session): FrontLine['unit'] {
  const id = session.dealt.doughOrder[0]
  return id === undefined ? null : { kind: 'batch', id }
}
