import type { Step, StepKind } from '@/core/trial/step.ts'

const minute = 60
const hour = 60 * minute

/** Names of the kinds as the page's menus write them. */
export const stepKindNames: Record<StepKind, string> = {
  feed: 'Feed the starter',
  autolyse: 'Autolyse',
  mix: 'Mix',
  rest: 'Rest',
  fold: 'Fold',
  divide: 'Divide',
  ball: 'Ball',
  proof: 'Proof',
  'cold-proof': 'Cold proof',
  'warm-up': 'Warm up',
  open: 'Open',
  top: 'Top',
  slash: 'Slash',
  bake: 'Bake',
  cool: 'Cool',
  cut: 'Cut',
  serve: 'Serve',
}

type Usual = Pick<
  Step,
  'per' | 'handsSeconds' | 'waitSeconds' | 'earlySeconds' | 'lateSeconds' | 'uses'
> & {
  repeats?: number
}

/** Usual hands-on time, wait and tolerance of each kind (common practice): rests ±2 min, proofs ±5 %, cold proof ±1 h, bake ±5 s. */
const usual: Record<StepKind, Usual> = {
  feed: batch(5 * minute, 8 * hour, 30 * minute),
  autolyse: batch(4 * minute, 30 * minute, 2 * minute),
  mix: { ...batch(10 * minute, 0, 2 * minute), uses: ['hands', 'mixer'] },
  rest: batch(0, 20 * minute, 2 * minute),
  fold: { ...batch(2 * minute, 30 * minute, 2 * minute), repeats: 3 },
  divide: batch(5 * minute, 0, 2 * minute),
  ball: piece(1 * minute, 0, 2 * minute),
  proof: batch(0, 2 * hour, 6 * minute),
  'cold-proof': batch(2 * minute, 18 * hour, hour),
  'warm-up': batch(1 * minute, hour, 5 * minute),
  open: piece(1 * minute, 0, 30),
  top: piece(1 * minute, 0, 30),
  slash: piece(30, 0, 30),
  bake: { ...piece(30, 15 * minute, 5), uses: ['hands', 'oven'] },
  cool: { ...piece(0, hour, 5 * minute), uses: [] },
  cut: piece(30, 0, 30),
  serve: piece(30, 0, 30),
}

/** A new step of a kind with its usual times, ended by the clock. */
export function usualStep(kind: StepKind, id: string): Step {
  const { repeats = 1, ...times } = usual[kind]
  return { id, kind, name: stepKindNames[kind], repeats, ...times, endsBy: { by: 'clock' } }
}

function batch(handsSeconds: number, waitSeconds: number, toleranceSeconds: number): Usual {
  return {
    per: 'batch',
    handsSeconds,
    waitSeconds,
    earlySeconds: toleranceSeconds,
    lateSeconds: toleranceSeconds,
    uses: handsSeconds > 0 ? ['hands'] : [],
  }
}

function piece(handsSeconds: number, waitSeconds: number, toleranceSeconds: number): Usual {
  return { ...batch(handsSeconds, waitSeconds, toleranceSeconds), per: 'piece' }
}
