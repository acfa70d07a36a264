import { expect, test } from 'vitest'
import { stageWords } from '@/app/home/stage-words.ts'

test('between two sessions the book says which comes next, and leads to the plan where it is begun', () => {
  expect(stageWords({ stage: 'between', sessionsDone: 1 })).toEqual({
    words: 'Session 2 comes next',
    place: 'plan',
  })
  expect(stageWords({ stage: 'working', sessionsDone: 1 }).place).toBe('bench')
})

test('a trial with all its sessions done claims no answer: its findings may say that nothing is settled', () => {
  const { words, place } = stageWords({ stage: 'answered', sessionsDone: 1 })
  expect(words).toBe('Finished')
  expect(place).toBe('findings')
})
