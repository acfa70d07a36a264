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

for (const sample of samples)
  test(`the shelf pictures the levels of ${sample.name} as they are`, async () => {
    const read = readTrialFile(await sample.read())
    if (!read.ok) throw new Error(`the sample ${sample.name} cannot be read`)
    const { levels, factor, tasters, plannedSessions } = planInForce(read.whole)
    expect(levels.map(({ value }) => value)).toEqual(sample.levels)
    expect(levels.find(({ control }) => control)?.value).toBe(sample.usual)
    expect(factor).toMatchObject({ name: sample.factorName, unitOfMeasure: sample.unitOfMeasure })
    expect(sample.stands).toContain(
      sample.stands.startsWith('Finished')
        ? `${read.whole.sessions.length} session`
        : `of ${plannedSessions}`,
    )
    if (sample.stands.includes('people'))
      expect(sample.stands).toContain(`${tasters.length} people`)
  })
