import { saysSame } from '@/core/record/says-same.ts'

/** What came of merging two changed copies of one record: the record, and the paths at which both had changed it differently. */
export interface Merged<Value> {
  value: Value
  /** As JSON Pointers; at each of them `mine` was kept. */
  conflicts: string[]
}

type Plain = Record<string, unknown>

const isPlain = (value: unknown): value is Plain =>
  value !== null && typeof value === 'object' && !Array.isArray(value)

/** The name by which an item of a list is told from the others; undefined where it has none. */
function nameOf(item: unknown): string | undefined {
  if (!isPlain(item)) return undefined
  const name = item.id ?? item.tasterId ?? item.ingredientId
  return typeof name === 'string' ? name : undefined
}

/**
 * Two changed copies of one record brought together field by field, against the record that both began from: what only one
 * of them changed is taken from it; what both changed alike stands; what both changed differently stays as `mine` has it and
 * is told as a conflict. Lists whose items have ids are merged item by item, in `mine`'s order with `theirs` new ones behind
 * the item they followed; any other list is one field. Knows of no clock.
 */
export function mergeByField<Value>(base: Value, theirs: Value, mine: Value): Merged<Value> {
  const conflicts: string[] = []
  const value = merged(base, theirs, mine, '', conflicts)
  return { value: value as Value, conflicts }
}

function merged(
  base: unknown,
  theirs: unknown,
  mine: unknown,
  path: string,
  conflicts: string[],
): unknown {
  if (saysSame(base, theirs)) return mine
  if (saysSame(base, mine) || saysSame(theirs, mine)) return theirs
  if (isPlain(theirs) && isPlain(mine))
    return mergedFields(isPlain(base) ? base : {}, theirs, mine, path, conflicts)
  if (isNamedList(theirs) && isNamedList(mine))
    return mergedList(isNamedList(base) ? base : [], theirs, mine, path, conflicts)
  conflicts.push(path)
  return mine
}

function mergedFields(
  base: Plain,
  theirs: Plain,
  mine: Plain,
  path: string,
  conflicts: string[],
): Plain {
  const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])]
  const fields = keys.map((key): [string, unknown] => [
    key,
    merged(base[key], theirs[key], mine[key], `${path}/${key}`, conflicts),
  ])
  return Object.fromEntries(fields.filter(([, value]) => value !== undefined))
}

const isNamedList = (value: unknown): value is unknown[] =>
  Array.isArray(value) &&
  new Set(value.map(nameOf)).size === value.length &&
  value.every((item) => nameOf(item) !== undefined)

function mergedList(
  base: readonly unknown[],
  theirs: readonly unknown[],
  mine: readonly unknown[],
  path: string,
  conflicts: string[],
): unknown[] {
  const named = (list: readonly unknown[]) => new Map(list.map((item) => [nameOf(item), item]))
  const [before, their, my] = [named(base), named(theirs), named(mine)]
  const order = inOrder(base, theirs, mine)
  return order.flatMap((name) => {
    const value = merged(
      before.get(name),
      their.get(name),
      my.get(name),
      `${path}/${name}`,
      conflicts,
    )
    return value === undefined ? [] : [value]
  })
}

/** The names of both lists: in the order of the one that moved them (`mine` when both did), the other's own behind the item they followed. */
function inOrder(base: readonly unknown[], theirs: readonly unknown[], mine: readonly unknown[]) {
  const names = (list: readonly unknown[]) => list.map(nameOf)
  const kept = new Set(names(mine))
  const sameOrder = saysSame(
    names(base).filter((name) => kept.has(name)),
    names(mine).filter((name) => names(base).includes(name)),
  )
  const [first, second] = sameOrder ? [theirs, mine] : [mine, theirs]
  const order = names(first)
  for (const [index, name] of names(second).entries()) {
    if (order.includes(name)) continue
    const after = index === 0 ? -1 : order.indexOf(names(second)[index - 1])
    order.splice(after + 1, 0, name)
  }
  return order
}
