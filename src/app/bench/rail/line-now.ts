import { clockOf, runOf } from '@/app/bench/day/next-on-line.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { lateBy } from '@/core/session/late-by.ts'
import { doughsInWork, letterOfLevel, type Unit } from '@/core/session/line.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { StepRun } from '@/core/session/step-runs.ts'

/** One line of the day as its tab shows it: the dough of a level, or the dough of all levels before they run apart. */
export interface LineNow {
  key: string
  levelId: string | null
  letter: string
  unit: Unit
  /** What is next to do for it, soonest first; null when it is through. */
  item: AgendaItem | null
  run: StepRun | undefined
  /** When the hands come to it by the day as it was made anew last (UTC ms); null where nothing tells. */
  goesAt: number | null
}

/** The lines of a session in the order of its levels; one dough of all levels is one line until its pieces run apart. */
export function linesNow(
  session: Session,
  levelIds: readonly string[],
  items: readonly AgendaItem[],
  runs: readonly StepRun[],
  goesAt: (item: AgendaItem) => number | null,
): LineNow[] {
  const doughs = doughsInWork(session)
  const common = doughs.find(({ levelId }) => levelId === null)
  const line = (levelId: string | null, letter: string, unit: Unit): LineNow => {
    const item = items.find((each) =>
      each.units.some(({ id }) => belongs(session, id, levelId, unit)),
    )
    const own = item ?? null
    return {
      key: unit.id,
      levelId,
      letter,
      unit,
      item: own,
      run: own ? runOf(runs, own) : undefined,
      goesAt: own && goesAt(own),
    }
  }
  if (common && !items.some(({ levelId }) => levelId !== null))
    return [line(null, common.letter, { kind: 'batch', id: common.id })]
  return levelIds.flatMap((levelId) => {
    const letter = letterOfLevel(session, levelId)
    const dough = doughs.find((each) => each.levelId === levelId)
    const piece = session.pieces.find((each) => each.levelId === levelId && each.role !== 'spare')
    const unit: Unit | null = dough
      ? { kind: 'batch', id: dough.id }
      : piece
        ? { kind: 'piece', id: piece.id }
        : null
    return letter && unit ? [line(levelId, letter, unit)] : []
  })
}

/** The line on which something begins next, by the order of what is to do (`items`) and not of the levels; null where nothing does. */
export function nextToBegin(
  lines: readonly LineNow[],
  items: readonly AgendaItem[],
): string | null {
  const first = items.find((item) => item.do === 'start')
  return lines.find(({ item }) => item !== null && item === first)?.key ?? null
}

/** Whether a dough or piece belongs to a line. */
function belongs(session: Session, id: string, levelId: string | null, unit: Unit): boolean {
  if (id === unit.id) return true
  if (levelId === null) return false
  const piece = session.pieces.find((each) => each.id === id)
  return piece
    ? piece.levelId === levelId
    : session.batches.find((each) => each.id === id)?.levelId === levelId
}

/** What a tab says of its line, and the clock beside it: seconds left (over: past), or run; null for none. */
export interface TabState {
  word: string
  seconds: number | null
  late: boolean
}

/**
 * The state of a line in a word, with its clock, at `now` (UTC ms). It is late once it is past its tolerance; what is to begin
 * counts to the moment at which the hands come to it, and once late from the one at which it was due.
 */
export function tabState({ item, run, goesAt }: LineNow, isNext: boolean, now: number): TabState {
  if (item === null) return { word: 'through', seconds: null, late: false }
  const { step, do: what, handsOn, dueAt } = item
  const late = lateBy(item, now) !== null
  if (what === 'start') {
    if (dueAt === null) return { word: isNext ? 'next' : 'later', seconds: null, late: false }
    const at = late || goesAt === null || goesAt < now ? dueAt : goesAt
    return { word: late ? 'late' : isNext ? 'next' : 'then', seconds: (at - now) / 1000, late }
  }
  const clock = run ? clockOf(run) : null
  const ran = clock ? (now - clock.startedAt) / 1000 : 0
  const byHand =
    handsOn || (step.handsSeconds > 0 && step.waitSeconds === 0 && step.kind !== 'bake')
  if (byHand) return { word: 'hands', seconds: ran, late: false }
  const word = step.kind === 'bake' ? 'oven' : 'rest'
  if (step.endsBy.by !== 'clock' || !clock) return { word, seconds: ran, late: false }
  // As the day has it: a wait may be planned longer than the method's, so that all meet the oven alike.
  const left = dueAt === null ? clock.goalSeconds - ran : (dueAt - now) / 1000
  return { word: late ? 'late' : word, seconds: left, late }
}
