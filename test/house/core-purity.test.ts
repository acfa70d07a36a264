import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'

const root = new URL('../..', import.meta.url).pathname
const bin = (name: string) => join(root, 'node_modules/.bin', name)
let canary = ''

beforeAll(() => {
  canary = mkdtempSync(join(tmpdir(), 'evenhand-core-'))
  mkdirSync(join(canary, 'test/house'), { recursive: true })
  mkdirSync(join(canary, 'src/core/units'), { recursive: true })
  cpSync(join(root, 'test/house/core-is-pure.grit'), join(canary, 'test/house/core-is-pure.grit'))
  cpSync(join(root, 'biome.json'), join(canary, 'biome.json'))
  cpSync(join(root, 'test/house/arrows.biome.json'), join(canary, 'test/house/arrows.biome.json'))
})
afterAll(() => rmSync(canary, { recursive: true, force: true }))

test.each(['Date.now()', 'Math.random()', 'new Date()'])('lint refuses %s in the core', (call) => {
  writeFileSync(join(canary, 'src/core/units/canary.ts'), `export const at = ${call}\n`)
  const lint = spawnSync(bin('biome'), ['lint', 'src'], { cwd: canary, encoding: 'utf8' })
  expect(lint.status).not.toBe(0)
  expect(lint.stdout + lint.stderr).toContain('clock and chance')
})

test.each(['document.title', 'new URL("a:b")', 'crypto.randomUUID()', 'structuredClone({})'])(
  'the core does not compile with %s',
  (use) => {
    writeFileSync(join(canary, 'src/core/units/canary.ts'), `export const thing = ${use}\n`)
    const config = { extends: join(root, 'tsconfig.core.json'), include: [join(canary, 'src')] }
    writeFileSync(join(canary, 'tsconfig.json'), JSON.stringify(config))
    const compile = spawnSync(bin('tsc'), ['-p', canary], { encoding: 'utf8' })
    expect(compile.status).not.toBe(0)
    expect(compile.stdout).toContain('Cannot find name')
  },
)
