import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

const root = new URL('../../', import.meta.url)
const read = (path: string) => readFileSync(new URL(path, root), 'utf8')

/** The numbers of the rules a specification states. */
const rulesOf = (path: string) =>
  [...read(path).matchAll(/^- \*\*([A-Z]\d+)\*\*/gm)].map((match) => match[1])

/** The numbers that titles of tests quote, in these folders, of rules that begin with one of these letters. */
const quotedIn = (folders: string[], letters: string, named = /\.test\.ts$/) =>
  folders.flatMap((folder) =>
    readdirSync(new URL(folder, root))
      .filter((name) => named.test(name))
      .flatMap((name) => [
        ...read(folder + name).matchAll(new RegExp(`['"\`]([${letters}]\\d+): `, 'g')),
      ])
      .map((match) => match[1]),
  )

describe.each([
  ['src/notebook/SPEC.md', quotedIn(['test/trial-file/', 'test/notebook/'], 'FN'), 50],
  // What the seal promises is attacked through the notebook's own calls.
  ['src/core/seal/SPEC.md', quotedIn(['test/notebook/'], 'S', /^seal.*\.test\.ts$/), 15],
] as const)('%s', (path, titles, least) => {
  const ruleIds = rulesOf(path)

  test('every rule is quoted in a test title', () => {
    expect(ruleIds.length).toBeGreaterThan(least)
    expect(new Set(ruleIds).size).toBe(ruleIds.length)
    expect(ruleIds.filter((id) => !titles.includes(id))).toEqual([])
  })

  test('every rule quoted in a test title stands in it', () => {
    expect(titles.filter((id) => !ruleIds.includes(id))).toEqual([])
  })
})
