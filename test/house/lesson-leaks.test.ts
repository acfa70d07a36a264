import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { projectFiles } from './project-files.ts'

/**
 * Everything by which a screen can say, show or find the answer of a trial: the sentences, the findings themselves, what a house
 * formula rests on, several trials as one answer, and the answer that is kept beside a trial for the home list.
 */
const speaks = [
  /@\/core\/wording\/findings\/(headline|pooled-text|bake-next|answer-of-rung)\.ts/,
  /@\/core\/report\/report-document\.ts/,
  /@\/app\/worker\/use-findings\.ts/,
  /service\.(together|findings|report)\(/,
  /\brestsOnText\b/,
  /\bsummary\.answer\b|\bline\.answer\b|\banswer\b[^\n]*: Summary\b/,
]

/** Covered whole by the page of a trial: Findings and Report are not drawn while a lesson is under way, the lesson shows its own parts. */
const coveredPlaces = /^src\/app\/(report|findings\/(?!together\/))/

/** Whoever else speaks an answer, and the file that asks whether a lesson covers it, before it is drawn. */
const asks: Readonly<Record<string, string>> = {
  'src/app/findings/together/together-found.tsx': 'src/app/findings/together/together-place.tsx',
  'src/app/home/chain-shelf.tsx': 'src/app/home/chain-shelf.tsx',
  'src/app/home/house-shelf.tsx': 'src/app/home/house-shelf.tsx',
  'src/app/home/start/bake-shelf.tsx': 'src/app/home/start/open-houses.ts',
  'src/app/home/trial-line.tsx': 'src/app/home/trial-line.tsx',
  'src/app/house/house-place.tsx': 'src/app/house/house-place.tsx',
  'src/app/house/house-sheet.tsx': 'src/app/house/house-place.tsx',
}

/** They find answers and show none. */
const silent = new Set(['src/app/home/book-answers.tsx'])

const root = fileURLToPath(new URL('../../', import.meta.url))
const read = (path: string) => readFileSync(root + path, 'utf8')
const screens = projectFiles().filter((path) => /^src\/app\/.*\.tsx?$/.test(path))
const speaking = screens.filter(
  (path) => !path.startsWith('src/app/worker/') && speaks.some((way) => way.test(read(path))),
)

test('whatever can speak the answer of a trial lies behind the cover of a lesson, or asks whether one covers it', () => {
  const open = speaking.filter((path) => !coveredPlaces.test(path) && !silent.has(path))
  expect(new Set(open)).toEqual(new Set(Object.keys(asks)))
  // The patterns see the places that are known to speak.
  expect(speaking).toContain('src/app/report/report-place.tsx')
  for (const guard of new Set(Object.values(asks)))
    expect([guard, /\b(coveredTrials|withoutCovered)\(/.test(read(guard))]).toEqual([guard, true])
})

test('the page of a trial covers exactly Findings and Report, by the same question', () => {
  const page = read('src/app/frame/trial-page.tsx')
  expect(page).toContain("new Set(['findings', 'report'])")
  expect(page).toMatch(/answers\.has\(place\.name\) && coveredTrials\(/)
})
