import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { projectFiles } from './project-files.ts'

const folder = 'src/core/statistics/'
const modules = import.meta.glob<Record<string, unknown>>('../../src/core/statistics/**/*.ts', {
  eager: true,
})
const inScope = Object.assign({}, ...Object.values(modules)) as Record<string, unknown>

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

test('a third and more of the statistics carry an example', () => {
  expect(examples.length).toBeGreaterThanOrEqual(20)
})
