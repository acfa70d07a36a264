import { expect, test } from 'vitest'
import { tellApartQuestion } from '@/core/wording/tasting/tell-apart-question.ts'

test('a pair is asked for what the plan compares it in; the other tests name nothing', () => {
  expect(tellApartQuestion({ test: 'paired', attribute: 'saltiness' })).toContain(
    'has more saltiness?',
  )
  expect(tellApartQuestion({ test: 'triangle', attribute: 'saltiness' })).not.toContain('salt')
  expect(tellApartQuestion({ test: 'duo-trio' })).toContain('like the first')
})
