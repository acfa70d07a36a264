import type { StepKind } from '@/core/trial/step.ts'

/** What can be logged about the dough or piece in front, besides its steps. */
export type EntryKind =
  | 'weigh'
  | 'temperature'
  | 'rise'
  | 'folds'
  | 'answers'
  | 'worked-in'
  | 'pieces'
  | 'failure'
  | 'photo'
  | 'note'

export const entryNames: Record<EntryKind, string> = {
  weigh: 'Weigh',
  temperature: 'Temperature',
  rise: 'Rise',
  folds: 'Folds',
  answers: 'Handling',
  'worked-in': 'Worked in',
  pieces: 'Pieces',
  failure: 'Failure',
  photo: 'Photo',
  note: 'Note',
}

/** What decides which entries make sense for the dough or piece in front. */
export interface FrontState {
  unit: 'batch' | 'piece'
  /** The step that runs or comes next; null when its line is through. */
  step: StepKind | null
  /** Lines of its weigh sheet that can be logged, and how many were. */
  toWeigh: number
  weighed: number
  /** The dough was divided: its pieces are things of their own. */
  divided: boolean
  /** The plan asks the baker something about such a dough or piece. */
  asked: boolean
}

const rising: ReadonlySet<StepKind> = new Set(['feed', 'rest', 'fold', 'proof', 'cold-proof'])
const handled: ReadonlySet<StepKind> = new Set(['mix', 'fold', 'divide', 'ball', 'open', 'slash'])

/** How many keys stand in front; the others wait behind "More". */
export const keysInFront = 4

/** The entries that make sense now, likeliest first: what is still to weigh, then what the step at hand calls for. */
export function entryKeys(front: FrontState): EntryKind[] {
  const { unit, step, toWeigh, weighed, divided, asked } = front
  const weighable = unit === 'batch' && toWeigh > 0
  const rises = step !== null && rising.has(step)
  const handles = step !== null && handled.has(step)
  const weighsPieces = divided || unit === 'piece'
  const now: [boolean, EntryKind][] = [
    [weighable && weighed < toWeigh && !divided, 'weigh'],
    [true, 'temperature'],
    [rises, 'rise'],
    [step === 'fold', 'folds'],
    [weighsPieces, 'pieces'],
    [asked, 'answers'],
    [handles, 'worked-in'],
    [true, 'photo'],
    [true, 'note'],
    [true, 'failure'],
    [!handles, 'worked-in'],
    [!rises, 'rise'],
    [weighable && (weighed >= toWeigh || divided), 'weigh'],
  ]
  return now.flatMap(([fits, kind]) => (fits ? [kind] : []))
}
