import { expect, test } from 'vitest'
import { samples } from '@/app/services/samples.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'

test('there are samples to open', () => {
  expect(samples.length).toBeGreaterThan(0)
})

for (const sample of samples)
  test(`the shelf calls ${sample.name} by the question it asks, and says what it shows`, async () => {
    const read = readTrialFile(await sample.read())
    if (!read.ok) throw new Error(`the sample ${sample.name} cannot be read`)
    expect(planInForce(read.whole).question).toBe(sample.title)
    expect(sample.shows).not.toBe('')
  })
