import { expect, test } from 'vitest'
import { widthOfView } from '@/app/bench/entries/width-of-view.ts'
import { plainManner, writtenAs } from '@/core/units/manner.ts'

test.each([
  ['24', 240],
  ['24 cm', 240],
  ['1.1', 11],
  ['12 1/2', 125],
  ['½ cm', 5],
])('a view of “%s” is %d mm wide', (text, widthMillimetres) => {
  expect(widthOfView(text)).toEqual({ widthMillimetres })
})

test('after a comma it is read too', () => {
  const read = writtenAs({ ...plainManner, decimal: 'comma' }, () => widthOfView('18,2'))
  expect(read).toEqual({ widthMillimetres: 182 })
})

test('an empty field says nothing of the width', () => {
  expect(widthOfView(' ')).toEqual({})
})

test.each(['wide', '0', '-3', '1001', '24 g'])(
  '“%s” is no width, and the photo waits for it',
  (text) => {
    expect(widthOfView(text)).toBeNull()
  },
)
