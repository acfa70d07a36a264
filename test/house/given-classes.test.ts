import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

const source = fileURLToPath(new URL('../../src/', import.meta.url))

/** Classes that a part asks of its style and the style does not give: such a part stands without its look, and nothing says so. */
function missingClasses(part: string, styleAt: (path: string) => string): string[] {
  const imports = [...part.matchAll(/^import (\w+) from '((?:\.|@\/)[^']+\.module\.css)'/gm)]
  return imports.flatMap(([, name = '', path = '']) => {
    const given = new Set([...styleAt(path).matchAll(/\.([a-zA-Z_][\w-]*)/g)].map(([, one]) => one))
    const asked = [
      ...part
        .replace(/^.* from '.*'$/gm, '')
        .matchAll(new RegExp(`\\b${name}\\.([a-zA-Z_]\\w*)`, 'g')),
    ]
    return [...new Set(asked.map(([, one = '']) => one))].filter((one) => !given.has(one))
  })
}

test('every class that a part asks for is given by its style', () => {
  const parts = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((path) =>
    path.endsWith('.tsx'),
  )
  const missing = parts.flatMap((path) => {
    const styleAt = (style: string) =>
      readFileSync(
        style.startsWith('@/') ? join(source, style.slice(2)) : join(source, dirname(path), style),
        'utf8',
      )
    return missingClasses(readFileSync(join(source, path), 'utf8'), styleAt).map(
      (one) => `${path}: ${one}`,
    )
  })
  expect(parts.length).toBeGreaterThan(300)
  expect(missing).toEqual([])
})

test('a class that is given nowhere is found', () => {
  const part = "import look from './a.module.css'\nconst a = [look.known, look.none, look.known]\n"
  expect(missingClasses(part, () => '.known { color: red }')).toEqual(['none'])
})
