import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

/** Sample trials exactly as version 2 wrote them. */
const folder = fileURLToPath(new URL('./files-of-version-2/', import.meta.url))

describe('files of version 2', () => {
  test.each(readdirSync(folder))('F11: %s is read, brought up and kept whole', (name) => {
    const text = readFileSync(`${folder}${name}`, 'utf8')
    const read = readTrialFile(text)
    expect(read.ok ? [] : read.troubles).toEqual([])
    if (!read.ok) return
    const old = JSON.parse(text)
    expect(read.whole.events).toEqual(old.events)
    expect(read.whole.ballots).toEqual(old.ballots)
    const tolerances = read.whole.plans.flatMap(({ steps }) =>
      steps.map(({ earlySeconds, lateSeconds }) => [earlySeconds, lateSeconds]),
    )
    expect(tolerances).toEqual(
      old.plans.flatMap(({ steps }: { steps: { toleranceSeconds: number }[] }) =>
        steps.map(({ toleranceSeconds }) => [toleranceSeconds, toleranceSeconds]),
      ),
    )
    const again = readTrialFile(writeTrialFile(read.whole))
    expect(again.ok && again.whole).toEqual(read.whole)
  })
})
