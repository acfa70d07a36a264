import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'

const old = readFileSync(new URL('../version-1/pan-loaf-salt.json', import.meta.url), 'utf8')

it('says a tolerance of version 1 early and late, each as long as it was', () => {
  const before: { plans: { steps: { toleranceSeconds: number }[] }[] } = JSON.parse(old)
  const read = readTrialFile(old)
  if (!read.ok) throw new Error(JSON.stringify(read))
  const steps = read.whole.plans[0]?.steps ?? []
  expect(steps.map(({ earlySeconds, lateSeconds }) => [earlySeconds, lateSeconds])).toEqual(
    before.plans[0]?.steps.map(({ toleranceSeconds: each }) => [each, each]),
  )
  expect(steps.length).toBeGreaterThan(4)
})
