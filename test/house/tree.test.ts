import { expect, test } from 'vitest'
import { projectFiles } from './project-files.ts'

const files = projectFiles()
const topLevel = new Set(files.map((path) => path.split('/')[0] ?? ''))

test('the top level holds what the house names and what tools demand, nothing else', () => {
  const named = ['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'vite.config.ts']
  const folders = ['src', 'trials', 'test', 'docs']
  const demanded = [
    ...['index.html', 'tsconfig.json', 'tsconfig.core.json', 'biome.json', 'vitest.config.ts'],
    ...['package-lock.json', '.ci', '.gitignore', '.npmrc'],
  ]
  const allowed = new Set([...named, ...folders, ...demanded])
  expect([...topLevel].filter((name) => !allowed.has(name))).toEqual([])
  expect([...named, ...folders].filter((name) => !topLevel.has(name))).toEqual([])
})

test('no folder or file is a bag without a concept', () => {
  const bags = /(^|\/)(utils?|helpers?|common|misc|shared|types|index)(\/|\.tsx?$)/
  expect(files.filter((path) => bags.test(path) && !path.startsWith('docs/'))).toEqual([])
})

test('the lock file names no host', async () => {
  const { readFileSync } = await import('node:fs')
  const lock = readFileSync(new URL('../../package-lock.json', import.meta.url), 'utf8')
  const resolved = Object.values(JSON.parse(lock).packages as Record<string, { resolved?: string }>)
  expect(resolved.filter((each) => each.resolved?.startsWith('http'))).toEqual([])
})
