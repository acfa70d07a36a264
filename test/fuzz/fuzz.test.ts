import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { chanceFrom } from '@/core/design/chance.ts'
import { backupSource, fuzzBackup } from './fuzz-backup.ts'
import { fuzzCase, fuzzSources } from './fuzz-case.ts'
import { spoiledSlip } from './spoiled-slip.ts'

/** The short run of what `npm run fuzz` does twenty thousand times, with another seed. */
test('of 60 spoiled files none throws, none is half taken, and some are still read', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'evenhand-fuzz-'))
  const sources = await fuzzSources(process.cwd())
  const came = new Map<string, number>()
  try {
    for (let number = 0; number < 60; number += 1) {
      const outcome = await fuzzCase(2, number, sources, folder)
      const what = `${outcome.kind} ${outcome.came}`
      came.set(what, (came.get(what) ?? 0) + 1)
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
  expect(came.get('trial refused')).toBeGreaterThan(5)
  expect(came.get('trial answered')).toBeGreaterThan(5)
})

test('of 40 spoiled backups none throws, none is half taken, no damaged byte comes in, and some are still restored', async () => {
  const source = await backupSource()
  const came = new Map<string, number>()
  for (let number = 0; number < 40; number += 1) {
    const what = await fuzzBackup(chanceFrom(5, number), source)
    came.set(what, (came.get(what) ?? 0) + 1)
  }
  expect(came.get('refused')).toBeGreaterThan(5)
  expect(came.get('answered')).toBeGreaterThan(5)
})

test('of 300 spoiled slips and returns of both versions none is taken, and of those sealed anew some are answered', () => {
  const came = Array.from({ length: 300 }, (_, at) => spoiledSlip(chanceFrom(5, at)))
  expect(came).toContain('refused')
  expect(came).toContain('answered')
})
