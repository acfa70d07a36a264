import { expect, test } from 'vitest'
import { levelAxis } from '@/core/figure/level-axis.ts'
import { pairPicture } from '@/core/figure/pair-picture.ts'
import { pairsSvg } from '@/core/report/pairs-svg.ts'
import { railPlaces } from '@/core/report/rail-places.ts'

const long = [
  'Strong white flour of the hill mill, one',
  'Strong white flour of the hill mill, two',
  'Half wholemeal with its bran sieved once',
]
const choice = (labels: readonly string[]) =>
  levelAxis(labels.map((label, at) => ({ id: `l${at}`, value: null, label, control: at === 0 })))
const apart = ({ tabs }: ReturnType<typeof railPlaces>) =>
  tabs.every(
    (tab, at) =>
      at === 0 ||
      tab.tabPixels - tab.widthPixels / 2 >=
        (tabs[at - 1]?.tabPixels ?? 0) + (tabs[at - 1]?.widthPixels ?? 0) / 2,
  )

test('the options of a choice stand whole in their tabs, in lines, and no tab reaches into the next', () => {
  const places = railPlaces(choice(long), new Map([['l0', 'B']]), 570)
  expect(places.tabs.map(({ lines }) => lines.join(' '))).toEqual([
    `B ${long[0]}`,
    long[1],
    long[2],
  ])
  expect(apart(places)).toBe(true)
  expect(places.key).toEqual([])
})

test('where even four lines hold no name, tabs wear numbers, with a key', () => {
  const twelve = Array.from({ length: 12 }, (_, at) => `${long[at % 3]} of batch ${at}`)
  const places = railPlaces(choice(twelve), new Map(), 570)
  expect(places.tabs.map(({ lines }) => lines)).toEqual(twelve.map((_, at) => [String(at + 1)]))
  expect(places.key[11]).toBe(`12: ${twelve[11]}`)
  expect(apart(places)).toBe(true)
})

test('levels close together keep their whole numbers: tabs move apart, and hairlines lead to their places', () => {
  const axis = levelAxis(
    [60, 60.5, 61, 90].map((value) => ({
      id: `l${value}`,
      value,
      label: `${value}`,
      control: false,
    })),
  )
  const places = railPlaces(axis, new Map(), 570)
  expect(places.tabs.map(({ lines }) => lines[0])).toEqual(['60', '60.5', '61', '90'])
  expect(apart(places)).toBe(true)
  expect(places.gapPixels).toBeGreaterThan(0)
})

test('each pair of long names stands whole in the picture of differences, over its interval', () => {
  const [a = '', b = ''] = long
  const svg = pairsSvg({
    ...{ kind: 'pairs', title: 'Differences', alt: 'one', unit: `difference in ${long[2]}` },
    picture: pairPicture([{ a, b, difference: 1, low: 0.2, high: 1.8 }], 1),
  })
  expect(svg).toContain(`>${a} → ${b}</text>`)
  const y = Number(/<text x="0" y="(\d+)"/.exec(svg)?.[1])
  expect(y).toBeLessThan(Number(/<circle[^>]* cy="(\d+)"/.exec(svg)?.[1]) - 10)
})
