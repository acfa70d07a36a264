import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const root = new URL('../../', import.meta.url)
const read = (path: string) => readFileSync(new URL(path, root), 'utf8')
const ruleIds = [...read('src/notebook/SPEC.md').matchAll(/^- \*\*([FN]\d+)\*\*/gm)].map(
  (match) => match[1],
)
const titles = ['test/trial-file/', 'test/notebook/'].flatMap((folder) =>
  readdirSync(new URL(folder, root))
    .filter((name) => name.endsWith('.test.ts'))
    .flatMap((name) => [...read(folder + name).matchAll(/['"`]([FN]\d+): /g)])
    .map((match) => match[1]),
)

test('every rule of the specification is quoted in a test title', () => {
  expect(ruleIds.length).toBeGreaterThan(50)
  expect(new Set(ruleIds).size).toBe(ruleIds.length)
  expect(ruleIds.filter((id) => !titles.includes(id))).toEqual([])
})

test('every rule quoted in a test title stands in the specification', () => {
  expect(titles.filter((id) => !ruleIds.includes(id))).toEqual([])
})
