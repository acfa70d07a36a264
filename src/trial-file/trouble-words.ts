import type * as z from 'zod/mini'

type Issue = z.core.$ZodIssue

const kindWords: Readonly<Record<string, string>> = {
  object: 'an object',
  array: 'a list',
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  null: 'null',
}

const patternWords: Readonly<Record<string, string>> = {
  '/^[A-Za-z0-9_-]{1,64}$/': 'an id of 1 to 64 letters, digits, - and _',
  '/^[A-Z]{1,2}$/': 'one or two capital letters',
  '/^[1-9][0-9]{2}$/': 'a code from 100 to 999',
  '/\\S/': 'text that is not blank',
}

const choiceWords = (values: readonly unknown[]) =>
  values.length === 1
    ? JSON.stringify(values[0])
    : `one of ${values.map((value) => JSON.stringify(value)).join(', ')}`

const boundWords = (origin: string, bound: string, limit: number | bigint) => {
  if (origin === 'string') return `text of ${bound} ${limit} characters`
  if (origin === 'array') return `a list of ${bound} ${limit}`
  return `a number ${bound} ${limit}`
}

/** What stands in the place of a trouble when all is well, in a few words, from the checker's code. */
export function expectedWords(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return kindWords[issue.expected] ?? issue.expected
    case 'invalid_value':
      return choiceWords(issue.values)
    case 'too_small':
      if (issue.exact) return boundWords(issue.origin, 'exactly', issue.minimum)
      return boundWords(issue.origin, issue.inclusive ? 'at least' : 'above', issue.minimum)
    case 'too_big':
      if (issue.exact) return boundWords(issue.origin, 'exactly', issue.maximum)
      return boundWords(issue.origin, issue.inclusive ? 'at most' : 'below', issue.maximum)
    case 'invalid_format':
      return (
        patternWords[String(issue.pattern)] ?? `text that fits ${issue.pattern ?? issue.format}`
      )
    case 'invalid_union':
      return choiceWords('options' in issue && Array.isArray(issue.options) ? issue.options : [])
    default:
      return `what the format allows (${issue.code})`
  }
}

const longest = 40

/** A value found in a file in a few words: short ones as they stand, long ones by what they are. */
export function valueWords(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (Array.isArray(value)) return value.length === 1 ? 'a list of 1' : `a list of ${value.length}`
  if (value !== null && typeof value === 'object') return 'an object'
  if (typeof value === 'number')
    return Number.isFinite(value) ? String(value) : 'a number too large'
  const text = JSON.stringify(value)
  return text.length > longest ? `text of ${String(value).length} characters` : text
}
