import { mergeByField } from './merge-by-field.ts'
import type { Plan } from './plan-record.ts'

/**
 * Two changed copies of a plan brought together field by field against the revision both began from; where both changed a
 * field differently `mine` stands and the field's path is told. Identity and stamps are those of `theirs`: they say which
 * revision stands, not what is planned.
 */
export function mergePlans(
  base: Plan,
  theirs: Plan,
  mine: Plan,
): { plan: Plan; conflicts: string[] } {
  const { id, trialId, revision, at, zone } = theirs
  const alike = (plan: Plan): Plan => ({ ...plan, id, trialId, revision, at, zone })
  const { value, conflicts } = mergeByField(alike(base), theirs, alike(mine))
  return { plan: value, conflicts }
}
