import type { Plan } from './plan-record.ts'

type Planned = Plan['tasters'][number]

/**
 * The baker among a plan's tasters: whoever is marked so; else, where nobody keeps the key for them, the only taster there is.
 * Null where the baker does not taste.
 */
export function bakerAmong({
  tasters,
  keyKeptBy,
}: Pick<Plan, 'tasters' | 'keyKeptBy'>): Planned | null {
  const marked = tasters.find(({ baker }) => baker)
  if (marked) return marked
  const [only] = tasters
  if (tasters.length !== 1 || !only || only.baker === false) return null
  return keyKeptBy === 'baker' ? only : null
}

/** Whether the baker is planned to score without knowing which is which: then no code may stand beside a letter. */
export function bakerTastesBlind(plan: Pick<Plan, 'tasters' | 'keyKeptBy'>): boolean {
  return bakerAmong(plan)?.knows === false
}
