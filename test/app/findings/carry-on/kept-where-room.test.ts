import { expect, test } from 'vitest'
import { keptWhereRoom } from '@/app/findings/carry-on/use-kept-answer.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'

const failing = (failure: Error) => ({ keepAnswer: () => Promise.reject(failure) })

test('N40: on a full disk the answer is read all the same; only its line of the home list is not kept', async () => {
  const full = failing(new NotebookFailure('out-of-room'))
  await expect(keptWhereRoom(full, 'trial-1', 4, 'Clear.')).resolves.toBeUndefined()
})

test('N40: any other trouble with it is said', async () => {
  for (const failure of [new NotebookFailure('damaged'), new Error('a mistake')])
    await expect(keptWhereRoom(failing(failure), 'trial-1', 4, 'Clear.')).rejects.toBe(failure)
})
