/**
 * Names that stand side by side, those that are called the same told apart by a number in their order: "White (1)",
 * "White (2)". Names alone in their wording stay as they are.
 */
export function toldApart(names: readonly string[]): string[] {
  const counts = new Map<string, number>()
  const taken = new Set(names)
  return names.map((name) => {
    if (names.indexOf(name) === names.lastIndexOf(name)) return name
    let count = counts.get(name) ?? 0
    let apart = name
    do {
      count += 1
      apart = `${name} (${count})`
    } while (taken.has(apart))
    counts.set(name, count)
    taken.add(apart)
    return apart
  })
}
