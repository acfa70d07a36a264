import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { type Imports, importsOf } from './circles.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const note = readFileSync(`${root}docs/decisions/020-three-ways-through-the-house.md`, 'utf8')
const ways = note.split(/^## /m).slice(1)
const filesOf = (way: string) =>
  [...way.matchAll(/^\d+\. `([^`]+)`/gm)].map(([, path = '']) => path)

/** What is wrong with a way: files that are not there, stand twice, or are joined to none before them. */
function faults(paths: readonly string[], imports: Imports): string[] {
  const joined = (one: string, other: string) =>
    imports.get(one)?.includes(other) || imports.get(other)?.includes(one)
  return paths.flatMap((path, at) => {
    if (!existsSync(root + path)) return [`${path} is not there`]
    if (paths.indexOf(path) < at) return [`${path} stands twice`]
    const before = paths.slice(0, at)
    return at === 0 || before.some((each) => joined(path, each))
      ? []
      : [`${path} is joined to none`]
  })
}

test('there are three ways', () => {
  expect(ways.map((way) => way.split('\n')[0])).toEqual([
    'A level typed, to the weigh sheet, the fairness check and the report',
    'A bake, to a finding',
    'A score, to the sentence of the verdict',
  ])
})

for (const way of ways)
  test(`no file is passed twice, and each follows from one before: ${way.split('\n')[0]}`, () => {
    const paths = filesOf(way)
    expect(paths.length).toBeGreaterThan(10)
    expect(
      faults(
        paths,
        importsOf(
          root,
          paths.filter((path) => existsSync(root + path)),
        ),
      ),
    ).toEqual([])
  })

test('a planted fault is found', () => {
  const planted = [
    'src/core/record/text.ts',
    'src/none.ts',
    'src/core/record/text.ts',
    'src/cli/wrapped.ts',
  ]
  expect(faults(planted, new Map())).toEqual([
    'src/none.ts is not there',
    'src/core/record/text.ts stands twice',
    'src/cli/wrapped.ts is joined to none',
  ])
})
