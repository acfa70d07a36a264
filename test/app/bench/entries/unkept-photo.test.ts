import { afterEach, expect, test } from 'vitest'
import { carryPhoto } from '@/app/bench/entries/unkept-photo.ts'
import { unkept } from '@/app/services/unkept.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'

afterEach(() => unkept.setState({ items: [] }))

const shown = () => unkept.getState().items

function carried(keep: () => Promise<void>, photoId = 'photo-1', caption = 'too wet to fold') {
  carryPhoto({ photoId, caption, reason: 'out-of-room', keep })
}

test('a photo whose entry was left is shown until it is kept, each for itself', async () => {
  let room = false
  const keep = async () => {
    if (!room) throw new NotebookFailure('out-of-room')
  }
  carried(keep)
  carried(keep, 'photo-2', '')
  expect(shown().map(({ what }) => what)).toEqual([
    'The photo “too wet to fold”',
    'A photo from the bench',
  ])
  await shown()[0]?.retry()
  expect(shown()).toHaveLength(2)
  room = true
  for (const { retry } of shown()) await retry()
  expect(shown()).toEqual([])
})

test('it says why it cannot be kept now, and may be given up', async () => {
  carried(async () => {
    throw new NotebookFailure('no-such-trial')
  })
  await shown()[0]?.retry()
  expect(shown()).toMatchObject([{ reason: 'no-such-trial' }])
  shown()[0]?.giveUp()
  expect(shown()).toEqual([])
})
