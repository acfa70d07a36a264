import { execFileSync } from 'node:child_process'
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { arrows, overrideOf } from './arrows.mjs'

const root = new URL('../..', import.meta.url).pathname
const folders = arrows.map((arrow) => arrow.folder)
const forbiddenFor = (arrow: (typeof arrows)[number]) =>
  folders.filter((folder) => folder !== arrow.folder && !arrow.may.includes(folder))

let canary = ''
const refused = new Map<string, Set<number>>()

beforeAll(() => {
  canary = mkdtempSync(join(tmpdir(), 'evenhand-canary-'))
  for (const file of ['test/house/core-is-pure.grit', 'test/house/arrows.biome.json', 'biome.json'])
    cpSync(join(root, file), join(canary, file), { recursive: true })
  for (const arrow of arrows) {
    const lines = [
      ...forbiddenFor(arrow).map((folder) => `import '@/${folder}/thing.ts'`),
      ...arrow.packages.map((name) => `import '${name}'`),
      `import '../sibling/thing.ts'`,
    ]
    mkdirSync(join(canary, 'src', arrow.folder), { recursive: true })
    writeFileSync(join(canary, 'src', arrow.folder, 'canary.ts'), lines.join('\n'))
  }
  for (const diagnostic of lint()) {
    if (diagnostic.category !== 'lint/style/noRestrictedImports') continue
    const path = diagnostic.location.path
    const lines = refused.get(path) ?? new Set()
    lines.add(diagnostic.location.start.line)
    refused.set(path, lines)
  }
}, 60_000)

afterAll(() => rmSync(canary, { recursive: true, force: true }))

interface Diagnostic {
  category: string
  location: { path: string; start: { line: number } }
}

function lint(): Diagnostic[] {
  const biome = join(root, 'node_modules/.bin/biome')
  const args = ['lint', '--reporter=json', '--max-diagnostics=none', 'src']
  try {
    return JSON.parse(execFileSync(biome, args, { cwd: canary, encoding: 'utf8', stdio: 'pipe' }))
      .diagnostics
  } catch (failure) {
    return JSON.parse((failure as { stdout: string }).stdout).diagnostics
  }
}

describe('the arrows of the house', () => {
  test('the generated configuration holds exactly the table, and biome.json nothing of it', () => {
    const { overrides } = JSON.parse(
      readFileSync(join(root, 'test/house/arrows.biome.json'), 'utf8'),
    )
    expect(overrides).toEqual(arrows.map(overrideOf))
    const byHand = JSON.parse(readFileSync(join(root, 'biome.json'), 'utf8'))
    expect(byHand.extends).toEqual(['./test/house/arrows.biome.json'])
    expect(JSON.stringify(byHand)).not.toContain('noRestrictedImports')
  })

  test.each(arrows)('$folder refuses every arrow it may not have', (arrow) => {
    const count = forbiddenFor(arrow).length + arrow.packages.length + 1
    const lines = refused.get(`src/${arrow.folder}/canary.ts`) ?? new Set()
    expect([...lines].sort((a, b) => a - b)).toEqual(
      Array.from({ length: count }, (_, index) => index + 1),
    )
  })

  test('every folder of src stands in the table', () => {
    const standing = ['core', 'app'].flatMap((part) =>
      readdirSync(join(root, 'src', part)).map((name) => `${part}/${name}`),
    )
    const others = readdirSync(join(root, 'src')).filter(
      (name) => name !== 'core' && name !== 'app',
    )
    expect(folders).toEqual(expect.arrayContaining([...standing, ...others]))
  })
})
