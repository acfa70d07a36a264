import type { DoseAsked } from './dose-amounts.ts'
import type { DoughLine } from './dough-lines.ts'

/** A line of one batch, named across batches. */
export function doseKey(batchKey: string, line: Pick<DoughLine, 'key'>): string {
  return `${batchKey} ${line.key}`
}

/** The kind of ingredient a stock or a dry mix is made with. */
function carrierKind(by: 'stock' | 'dry-mix'): 'water' | 'flour' {
  return by === 'stock' ? 'water' : 'flour'
}

/** What may carry a dose into the same place: the waters or flours there, the dosed ingredient itself left out. */
function carriersBeside(
  lines: readonly DoughLine[],
  place: DoughLine,
  kind: 'water' | 'flour',
): DoughLine[] {
  return lines.filter(
    (line) =>
      line.kind === kind &&
      line.what === 'ingredient' &&
      line.into === place.into &&
      line.ingredientId !== place.ingredientId &&
      prefermentOf(line) === prefermentOf(place),
  )
}

/** Where a stock goes: into a preferment, or (null) into the dough at its mix. */
export interface DoseStage {
  prefermentId: string | null
}

/**
 * The stages that each want a stock of their own: yeast in plain water does not wait from a preferment's mix to the dough's.
 * One null, for all there is, where the dose is a dry mix or all of it goes into one stage.
 */
export function doseStages(
  batches: readonly { lines: readonly DoughLine[] }[],
  ingredientId: string,
  by: 'stock' | 'dry-mix',
): (DoseStage | null)[] {
  const places = batches.flatMap(({ lines }) =>
    lines.filter((line) => line.ingredientId === ingredientId && line.targetGrams > 0),
  )
  const stages = [...new Set(places.map(prefermentOf))]
  return by === 'dry-mix' || stages.length < 2
    ? [null]
    : stages.map((prefermentId) => ({ prefermentId }))
}

const prefermentOf = ({ into, prefermentId }: DoughLine) =>
  into === 'preferment' ? prefermentId : null

/** The line that gives way to a dose in the same place: its carrier's there; null where the place has none of it. */
export function carrierLine(
  lines: readonly DoughLine[],
  place: DoughLine,
  by: 'stock' | 'dry-mix',
  carrierId: string,
): DoughLine | null {
  const beside = carriersBeside(lines, place, carrierKind(by))
  return beside.find(({ ingredientId }) => ingredientId === carrierId) ?? null
}

/**
 * What every batch asks of a shared dose, and the carrier it is to be made with: of the waters or flours that are the same
 * wherever the dose goes, the one with most in the batch that has least of it. Null where there is none: a dry mix in one
 * flour would bring that flour into the others' doughs. A place without any water or flour is left to be weighed singly. With a
 * stage, only what goes into that one.
 */
export function dosesAsked(
  batches: readonly { key: string; lines: readonly DoughLine[] }[],
  ingredientId: string,
  by: 'stock' | 'dry-mix',
  stage: DoseStage | null = null,
): { carrierId: string | null; asked: DoseAsked[] } {
  const places = batches.flatMap(({ key, lines }) =>
    lines.flatMap((line) => {
      if (line.ingredientId !== ingredientId || line.what !== 'ingredient') return []
      if (stage && prefermentOf(line) !== stage.prefermentId) return []
      const beside = carriersBeside(lines, line, carrierKind(by))
      return beside.length > 0 ? [{ key: doseKey(key, line), line, beside }] : []
    }),
  )
  const leastOf = (carrier: DoughLine) =>
    Math.min(
      ...places.map(({ beside }) => beside.find((one) => isSame(one, carrier))?.targetGrams ?? 0),
    )
  const [carrier] = (places[0]?.beside ?? [])
    .filter((one) => places.every(({ beside }) => beside.some((other) => isSame(one, other))))
    .toSorted((a, b) => leastOf(b) - leastOf(a))
  const carrierId = carrier?.ingredientId ?? null
  if (!carrier || carrierId === null) return { carrierId: null, asked: [] }
  const asked = places.map(({ key, line, beside }) => ({
    key,
    ingredientGrams: line.targetGrams,
    carrierGrams: beside.find((one) => isSame(one, carrier))?.targetGrams ?? 0,
  }))
  return { carrierId, asked }
}

/** The same ingredient under the same name: an option may put another thing in its place. */
function isSame(one: DoughLine, other: DoughLine): boolean {
  return one.ingredientId === other.ingredientId && one.name === other.name
}
