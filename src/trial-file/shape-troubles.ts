import type * as z from 'zod/mini'
import type { FileTrouble } from './trouble.ts'
import { expectedWords, valueWords } from './trouble-words.ts'

type ShapeTrouble = Extract<FileTrouble, { reason: 'shape' }>

/** What stands at a path of a document; nothing where the path leads nowhere. */
function valueAt(document: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      value !== null && typeof value === 'object' ? Reflect.get(value, step) : undefined,
    document,
  )
}

/**
 * The checker's issues about a document as troubles in plain words, one each, by JSON Pointer; an unknown key is refused
 * by its own name. Two issues in one place with the same words count once.
 */
export function shapeTroubles(
  issues: readonly z.core.$ZodIssue[],
  document: unknown,
): ShapeTrouble[] {
  const troubles = issues.flatMap((issue): ShapeTrouble[] => {
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => ({
        reason: 'shape',
        pointer: jsonPointer([...issue.path, key]),
        expected: 'no such key',
        found: JSON.stringify(key),
      }))
    return [
      {
        reason: 'shape',
        pointer: jsonPointer(issue.path),
        expected: expectedWords(issue),
        found: valueWords(valueAt(document, issue.path)),
      },
    ]
  })
  const seen = new Map(troubles.map((each) => [`${each.pointer} ${each.expected}`, each]))
  return [...seen.values()]
}

/** A place in a JSON document as a JSON Pointer (RFC 6901): '' is the whole document. */
export function jsonPointer(path: readonly PropertyKey[]): string {
  return path.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}
