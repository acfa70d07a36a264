import { spawn, spawnSync } from 'node:child_process'
import { describe, expect, test } from 'vitest'
import { samplePath } from './sample-file.ts'

const start = 'src/cli/start.cjs'
const file = samplePath('focaccia-hydration')

describe('the command as a process of its own', () => {
  test('answers with exit code 0, refuses with 1, each on its own stream', () => {
    const good = spawnSync(process.execPath, [start, 'check', file], { encoding: 'utf8' })
    expect([good.status, good.stderr]).toEqual([0, ''])
    expect(good.stdout).toContain('five levels')
    const bad = spawnSync(process.execPath, [start, 'check', 'no.json'], { encoding: 'utf8' })
    expect([bad.status, bad.stdout]).toEqual([1, ''])
    expect(bad.stderr).toContain('no.json: there is no such file')
  }, 120_000)

  test('a reader who stops early is no trouble', async () => {
    const child = spawn(process.execPath, [start, 'findings', file, '--json'])
    child.stdout.destroy()
    let said = ''
    child.stderr.on('data', (part) => {
      said += part
    })
    const code = await new Promise((resolve) => child.on('close', resolve))
    expect([code, said]).toEqual([0, ''])
  }, 120_000)
})
