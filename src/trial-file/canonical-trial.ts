import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'

/** Rising by id, compared by UTF-16 code unit: the same everywhere, whatever the language of the machine. */
function byId<Kept extends { id: string }>(records: readonly Kept[]): Kept[] {
  return [...records].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
}

/**
 * The trial in its one canonical form: keys in the order of the shape, absent means the key is missing, and the lists of
 * whole records, whose order means nothing, rising by id. Throws when it does not fit the shape: a programmer's mistake.
 */
export function canonicalTrial(whole: WholeTrial): WholeTrial {
  const checked = wholeTrialShape.parse(whole)
  return {
    trial: checked.trial,
    plans: byId(checked.plans),
    sessions: byId(checked.sessions),
    events: byId(checked.events),
    ballots: byId(checked.ballots),
    photos: byId(checked.photos),
    kitchen: byId(checked.kitchen),
  }
}

/** Whether two trials say the same, the kitchen's copies left out: those belong to the kitchen and may have moved on. */
export function sameTrial(a: WholeTrial, b: WholeTrial): boolean {
  const text = (whole: WholeTrial) => JSON.stringify(canonicalTrial({ ...whole, kitchen: [] }))
  return text(a) === text(b)
}
