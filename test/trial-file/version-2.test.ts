import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { dataVersion } from '@/trial-file/data-version.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

/** Sample trials exactly as version 1 wrote them. */
const folder = fileURLToPath(new URL('./version-1/', import.meta.url))

describe('files of version 1', () => {
  test.each(readdirSync(folder))('F11: %s is read, brought up and kept whole', (name) => {
    const text = readFileSync(`${folder}${name}`, 'utf8')
    const read = readTrialFile(text)
    expect(read.ok ? [] : read.troubles).toEqual([])
    if (!read.ok) return
    const old = JSON.parse(text)
    expect(read.whole.trial.id).toBe(old.trial.id)
    expect(read.whole.ballots).toHaveLength(old.ballots.length)
    expect(read.whole.plans).toHaveLength(old.plans.length)
    const written = writeTrialFile(read.whole)
    expect(JSON.parse(written).version).toBe(dataVersion)
    const again = readTrialFile(written)
    expect(again.ok && again.whole).toEqual(read.whole)
  })

  test('F11: a stray key of that time is still refused by name', () => {
    const [name = ''] = readdirSync(folder)
    const text = readFileSync(`${folder}${name}`, 'utf8')
    const read = readTrialFile(text.replace('"seed":', '"sead":'))
    expect(read.ok).toBe(false)
  })
})
