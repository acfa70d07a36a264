import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { projectFiles } from './project-files.ts'
import { worked } from './worked-table.ts'

const folder = 'src/core/statistics/'
const modules = import.meta.glob<Record<string, unknown>>('../../src/core/statistics/**/*.ts', {
  eager: true,
})
/** What an example may name: every statistic, and the table worked by hand beside this file. */
const inScope = Object.assign({}, ...Object.values(modules), worked) as Record<string, unknown>

interface Example {
  file: string
  expression: string
  answer: string
}

/** An example is one line: `@example expression // answer (source)`. */
const examples: Example[] = projectFiles()
  .filter((path) => path.startsWith(folder))
  .flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/@example (.+?) \/\/ (.+?) \(.+\)$/gm)].map(
      ([, expression = '', answer = '']) => ({ file, expression, answer }),
    ),
  )

/** Half a unit of the last digit that is printed. */
const asPrinted = (printed: string) => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0) + 1e-12

/** The found value agrees with what is printed: a number to its digits, a record in the keys that are printed. */
function agree(found: unknown, printed: unknown, text: string): void {
  if (typeof printed === 'number')
    expect(Math.abs(Number(found) - printed)).toBeLessThanOrEqual(asPrinted(text))
  else if (Array.isArray(printed))
    for (const [index, each] of printed.entries())
      agree((found as unknown[])[index], each, `${each}`)
  else if (printed !== null && typeof printed === 'object')
    for (const [key, each] of Object.entries(printed))
      agree((found as Record<string, unknown>)[key], each, `${each}`)
  else expect(found).toEqual(printed)
}

test.each(examples)('$file: $expression', ({ expression, answer }) => {
  const found = new Function(...Object.keys(inScope), `return ${expression}`)(
    ...Object.values(inScope),
  )
  agree(found, JSON.parse(answer), answer)
})

/** Functions of the statistics that something outside of them calls. */
function calledFromOutside(): { file: string; name: string }[] {
  const found = new Map<string, { file: string; name: string }>()
  const others = projectFiles().filter(
    (path) => /^src\/.*\.tsx?$/.test(path) && !path.startsWith(folder),
  )
  for (const path of others) {
    const text = readFileSync(path, 'utf8')
    for (const [, names = '', file = ''] of text.matchAll(
      /import \{([^}]+)\} from '@\/(core\/statistics\/[^']+)'/g,
    )) {
      const own = readFileSync(`src/${file}`, 'utf8')
      for (const name of names.split(',').map((each) => each.trim()))
        if (new RegExp(`export function ${name}\\b`).test(own))
          found.set(name, { file: `src/${file}`, name })
    }
  }
  return [...found.values()]
}

const called = calledFromOutside()

test('every statistic that is asked from outside carries an example', () => {
  expect(called.length).toBeGreaterThan(50)
  const shown = ({ file, name }: { file: string; name: string }) =>
    examples.some((each) => each.file === file && new RegExp(`\\b${name}\\(`).test(each.expression))
  expect(called.filter((one) => !shown(one))).toEqual([])
})
