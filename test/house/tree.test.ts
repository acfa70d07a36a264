import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { arrows } from './arrows.mjs'
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

const developers = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8')
const [, tree = ''] = developers.split('## The tree')[1]?.split('```') ?? []
const rooms = (folder: string) => [
  ...new Set(files.flatMap((path) => path.match(`^${folder}/([^/.]+)/`)?.[1] ?? [])),
]

test('the tree in DEVELOPERS.md names every room of the core and every part of the app, and no other', () => {
  const core = [...tree.matchAll(/^ {2}([a-z-]+) /gm)].map(([, name = '']) => name)
  expect(core).toHaveLength(rooms('src/core').length)
  expect(new Set(core)).toEqual(new Set(rooms('src/core')))
  const app = tree.match(/^src\/app .*$/m)?.[0] ?? ''
  expect(rooms('src/app').filter((name) => !new RegExp(`\\b${name}\\b`).test(app))).toEqual([])
  const test = tree.match(/^test .*$/m)?.[0] ?? ''
  const beside = ['outside', 'browser', 'journeys', 'golden', 'speed', 'fuzz', 'kill', 'house']
  expect(beside.filter((name) => !test.includes(name))).toEqual([])
})

test('inside the core no room may reach one that stands below it in the tree', () => {
  const order = [...tree.matchAll(/^ {2}([a-z-]+) /gm)].map(([, name = '']) => name)
  const place = (folder: string) => order.indexOf(folder.split('/')[1] ?? '')
  const inCore = arrows.filter(({ folder }) => folder.startsWith('core/'))
  expect(inCore.length).toBeGreaterThan(20)
  const upwards = inCore.flatMap(({ folder, may }) =>
    may.filter((other) => place(other) > place(folder)).map((other) => `${folder} to ${other}`),
  )
  expect(upwards).toEqual([])
})
