import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { levelShort } from '@/core/wording/words/level-text.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'
import { unitLetter } from '@/core/wording/words/unit-name.ts'

/** How a batch or piece is called at the bench: its letter, its level, and for a piece its number in the batch. */
export interface LineName {
  letter: string
  levelId: string | null
  text: string
  /** Which piece of its line: "flight 2", "warm-up", "spare 1"; empty for a dough and an only piece. Never its code. */
  which: string
}

/** The name of a batch: letter and level; a dough that serves all levels has its letter alone. */
function batchName(session: Session, plan: Plan, batchId: string): LineName {
  const batch = session.batches.find((each) => each.id === batchId)
  if (!batch) throw new Error(`session ${session.id} has no batch ${batchId}`)
  const level = plan.levels.find((each) => each.id === batch.levelId)
  return {
    letter: batch.letter,
    levelId: batch.levelId,
    text: level ? `${batch.letter} ${levelShort(level)}` : batch.letter,
    which: '',
  }
}

/** The name of a piece: its line's letter and, of levels that may be named, its level; and which piece of that line it is. */
export function pieceName(session: Session, plan: Pick<Plan, 'levels'>, pieceId: string): LineName {
  const piece = session.pieces.find((each) => each.id === pieceId)
  if (!piece) throw new Error(`session ${session.id} has no piece ${pieceId}`)
  const { letter, which } = unitLetter(session, { kind: 'piece', id: pieceId })
  const level = plan.levels.find((each) => each.id === piece.levelId)
  return {
    letter,
    levelId: piece.levelId,
    text: [letter, level ? levelShort(level) : '', which ? `(${which})` : '']
      .filter(Boolean)
      .join(' '),
    which,
  }
}

/** The name of whatever an agenda line or log entry is about, batch or piece. */
export function unitName(
  session: Session,
  plan: Plan,
  unit: { kind: 'batch' | 'piece'; id: string },
): LineName {
  return unit.kind === 'batch'
    ? batchName(session, plan, unit.id)
    : pieceName(session, plan, unit.id)
}

/** A batch or piece by its letter and, for a piece among others of its line, which one: "C", "C, flight 2". */
export function lineText(
  session: Session,
  plan: Plan,
  unit: { kind: 'batch' | 'piece'; id: string },
): string {
  const { letter, which } = unitName(session, plan, unit)
  return which === '' ? letter : `${letter}, ${which}`
}

/** Which piece of its line something is about, before the words about it: "Flight 2: "; empty for a dough and an only piece. */
export function whichBefore(
  session: Session,
  plan: Plan,
  about: { kind: string; id: string },
): string {
  if (about.kind !== 'piece') return ''
  const { which } = pieceName(session, plan, about.id)
  return which === '' ? '' : `${asSentenceStart(which)}: `
}
