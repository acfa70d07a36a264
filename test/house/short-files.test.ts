import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { importsOf } from './circles.ts'
import { projectFiles } from './project-files.ts'

/** A file of fewer lines is either asked from two sides, tests among them, or says here why it stands alone. */
const shortLines = 15

const reasons: Readonly<Record<string, readonly string[]>> = {
  'named by a script of package.json or by the chain of versions, not by an import': [
    'src/cli/write-schemas.ts',
    'src/cli/write-thresholds.ts',
    'src/trial-file/version-2/to-version-2.ts',
    'src/trial-file/version-3/to-version-3.ts',
  ],
  'loaded late, so that what opens first stays small': ['src/cli/found-in-trial.ts'],
  'a part of a screen with state of its own': ['src/app/bench/entries/photo-thumb.tsx'],
  'a mark or a way of writing that the kit gives to all': [
    'src/app/kit/ledger/unit-text.tsx',
    'src/app/kit/look/ring-mark.tsx',
  ],
  'one question of the core, which its asker in another room does not answer': [
    'src/core/clock-plan/begun-seconds.ts',
    'src/core/statistics/distributions/largest-modulus.ts',
  ],
  'one act that changes a plan': ['src/core/plan-edits/take-out/put-back-parts.ts'],
  'one sentence, name or section, kept where all of its kind stand': [
    'src/core/report/cautions-section.ts',
  ],
}

const root = fileURLToPath(new URL('../../', import.meta.url))
const code = projectFiles().filter((path) => /^(src|test|trials)\/.*(?<!\.d)\.tsx?$/.test(path))
const imports = importsOf(root, code)
const lines = (path: string) =>
  readFileSync(root + path, 'utf8')
    .trimEnd()
    .split('\n').length
const short = code.filter((path) => path.startsWith('src/') && lines(path) < shortLines)
const askers = (path: string) => code.filter((each) => imports.get(each)?.includes(path)).length
const alone = short.filter((path) => askers(path) < 2)

test('a short file that one file alone asks is an idea of its own, with its reason', () => {
  const named = Object.values(reasons).flat()
  expect(alone.filter((path) => !named.includes(path))).toEqual([])
  // A reason that no file needs any more goes.
  expect(named.filter((path) => !alone.includes(path))).toEqual([])
})
