import { expect, test } from 'vitest'
import {
  withoutWrittenFirst,
  withWrittenFirst,
} from '@/core/plan-edits/start/with-written-first.ts'
import { planShape } from '@/core/trial/plan-record.ts'
import { writtenFirst } from '@/core/trial/written-first.ts'
import { aPlan } from '../trial/a-plan.ts'

test('what is written first comes and goes without a trace', () => {
  const plan = aPlan()
  const looking = withWrittenFirst(plan, { looks: true, mostSessions: 5 })
  expect(writtenFirst(looking)).toEqual({
    ...{ hopedLevelId: null, mostSessions: 5 },
    ...{ looks: true, againstUsual: false },
  })
  expect(planShape.safeParse(looking).success).toBe(true)
  expect(withWrittenFirst(looking, { looks: false, mostSessions: null })).toEqual(plan)
  expect(withoutWrittenFirst(looking)).toEqual(plan)
})
