import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterEach, expect, test } from 'vitest'
import { circles, importsOf } from './circles.ts'
import { projectFiles } from './project-files.ts'

const root = new URL('../..', import.meta.url).pathname
let planted = ''
afterEach(() => {
  if (planted !== '') rmSync(planted, { recursive: true })
  planted = ''
})

function circlesOfPlanted(files: Record<string, string>): string[][] {
  planted = mkdtempSync(join(tmpdir(), 'evenhand-circle-'))
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(planted, path)), { recursive: true })
    writeFileSync(join(planted, path), text)
  }
  return circles(importsOf(planted, Object.keys(files)))
}

test('no file of src reaches itself over its imports, those of types alone included', () => {
  const sources = projectFiles().filter((path) => /^src\/.*(?<!\.d)\.tsx?$/.test(path))
  expect(sources.length).toBeGreaterThan(1000)
  const imports = importsOf(root, sources)
  expect([...imports.values()].flat().length).toBeGreaterThan(sources.length)
  expect(circles(imports)).toEqual([])
})

test.each([
  ['values', `import { b } from './b.ts'`],
  ['types alone', `import type { B } from './b.ts'`],
  ['one type among values', `import { type B, c } from './b.ts'`],
  ['what is handed on', `export * from './b.ts'`],
  ['a type handed on', `export type { B } from './b.ts'`],
  ['the short way', `import { b } from '@/core/b.ts'`],
  ['a late import', `export const late = () => import('./b.ts')`],
  ['the type of a late import', `export type B = import('./b.ts').B`],
])('a planted circle over %s is found', (_, line) => {
  const files = { 'src/core/a.ts': line, 'src/core/b.ts': `import '@/core/a.ts'` }
  expect(circlesOfPlanted(files)).toEqual([['src/core/a.ts', 'src/core/b.ts']])
})

test('circles of three files and of one are found beside files that are in none', () => {
  expect(
    circlesOfPlanted({
      'src/enters.ts': `import './one.ts'`,
      'src/one.ts': `import './two.tsx'; import './leaf.ts'`,
      'src/two.tsx': `import type { Three } from './deep/three.ts'; export const two = <p>two</p>`,
      'src/deep/three.ts': `import { one } from '../one.ts'; import 'zod/mini'`,
      'src/leaf.ts': `export const leaf = 1`,
      'src/self.ts': `import './self.ts'; import './leaf.ts'`,
    }),
  ).toEqual([['src/deep/three.ts', 'src/one.ts', 'src/two.tsx'], ['src/self.ts']])
})

test('two ways to one file are no circle', () => {
  expect(
    circlesOfPlanted({
      'a.ts': `import './b.ts'; import './c.ts'`,
      'b.ts': `import './d.ts'`,
      'c.ts': `import './d.ts'`,
      'd.ts': `export {}`,
    }),
  ).toEqual([])
})

test('a file that cannot be parsed is named', () => {
  expect(() => circlesOfPlanted({ 'a.ts': `import {` })).toThrow('a.ts')
})
