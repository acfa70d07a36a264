import type { House, HouseRevision } from './house-record.ts'

/** What of a house formula changed between two revisions, in the order of the card. */
export type HouseChange = 'formula' | 'method' | 'temperature' | 'yield' | 'rests-on' | 'note'

const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other)

/** What a revision changed against the one before. */
export function houseChanges(before: HouseRevision, after: HouseRevision): HouseChange[] {
  const parts: [HouseChange, unknown, unknown][] = [
    ['formula', unsized(before), unsized(after)],
    ['method', before.steps, after.steps],
    ['temperature', before.temperature, after.temperature],
    ['yield', before.yield, after.yield],
    ['rests-on', before.restsOn, after.restsOn],
  ]
  return parts.flatMap(([what, one, other]) => (same(one, other) ? [] : [what]))
}

const unsized = ({ formula }: HouseRevision) => ({
  ingredients: formula.ingredients,
  preferments: formula.preferments,
})

/** The house formula with a revision more; one that changes nothing makes none. */
export function revisedHouse(house: House, revision: HouseRevision): House {
  const last = house.revisions.at(-1)
  if (last && houseChanges(last, revision).length === 0 && last.note === revision.note) return house
  return { ...house, revisions: [...house.revisions, revision] }
}

/** The same house formula resting on one trial more: what was confirmed or narrowed since. */
export function withMoreEvidence(before: HouseRevision, after: HouseRevision): HouseRevision {
  const known = after.restsOn.map(({ trialId }) => trialId)
  const kept = before.restsOn.filter(({ trialId }) => !known.includes(trialId))
  return { ...after, restsOn: [...kept, ...after.restsOn] }
}
