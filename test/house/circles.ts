import { readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { parseSync } from 'vite'

/** Files by what each imports, as paths from the root; only files that are keys themselves count. */
export type Imports = ReadonlyMap<string, readonly string[]>

/**
 * What each of `paths` imports from the others: of values, of types alone, handed on, and late (`import()`, in code and in
 * types). Paths are relative to `root`; `@/` stands for `src/`, as in the compiler's settings.
 */
export function importsOf(root: string, paths: readonly string[]): Imports {
  const known = new Set(paths)
  return new Map(
    paths.map((path) => {
      const named = specifiersOf(path, readFileSync(join(root, path), 'utf8'))
      return [path, [...new Set(named.map((name) => placeOf(path, name)))].filter(isKnown)]
    }),
  )

  function isKnown(path: string) {
    return known.has(path)
  }
}

function placeOf(from: string, specifier: string): string {
  if (specifier.startsWith('@/')) return join('src', specifier.slice(2))
  return specifier.startsWith('.') ? normalize(join(dirname(from), specifier)) : specifier
}

/** Every module that a file's text names. A file that cannot be parsed throws: what cannot be read cannot be judged. */
function specifiersOf(path: string, text: string): string[] {
  const { program, errors } = parseSync(path, text)
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`)
  const found: string[] = []
  visit(program)
  return found

  function visit(node: unknown) {
    if (Array.isArray(node)) {
      for (const each of node) visit(each)
      return
    }
    if (typeof node !== 'object' || node === null) return
    const { source } = node as { source?: { type?: string; value?: unknown } | null }
    if (source?.type === 'Literal' && typeof source.value === 'string') found.push(source.value)
    for (const each of Object.values(node)) visit(each)
  }
}

/**
 * Groups of files that reach each other over imports: the strongly connected parts with more than one file, or a file
 * that imports itself. Each group is sorted, and so are the groups.
 *
 * Tarjan, R. (1972), Depth-first search and linear graph algorithms, SIAM J. Comput. 1, 146-160 (from memory).
 */
export function circles(imports: Imports): string[][] {
  const order = new Map<string, number>()
  const open: string[] = []
  const found: string[][] = []

  for (const path of imports.keys()) if (!order.has(path)) reach(path)
  return found.sort(([one = ''], [other = '']) => byName(one, other))

  function reach(path: string): number {
    const here = order.size
    order.set(path, here)
    let low = here
    open.push(path)
    for (const next of imports.get(path) ?? []) {
      const seen = order.get(next)
      if (seen === undefined) low = Math.min(low, reach(next))
      else if (open.includes(next)) low = Math.min(low, seen)
    }
    if (low === here) {
      const group = open.splice(open.indexOf(path))
      if (group.length > 1 || imports.get(path)?.includes(path)) found.push(group.sort(byName))
    }
    return low
  }
}

function byName(one: string, other: string): number {
  return one < other ? -1 : 1
}
