import { expect, test } from 'vitest'
import { columnsOfPages } from '@/app/plan/paper/columns-of-pages.ts'
import { PrintedWeighSheet } from '@/app/plan/paper/printed-weigh-sheet.tsx'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { sampleTrial } from '../../../cli/sample-file.ts'
import { onPaper, wordsOf } from './on-paper.tsx'

const count = (html: string, pattern: RegExp) => [...html.matchAll(pattern)].length
const boxes = /<i class="[^"]*box/g

function printed(name: string, sessions?: []) {
  const whole = sampleTrial(name)
  const [plan] = whole.plans
  if (!plan) throw new Error(`${name} has no plan`)
  const html = onPaper(<PrintedWeighSheet />, plan, sessions ? { ...whole, sessions } : whole)
  return { plan, whole, html, words: wordsOf(html) }
}

test.each([
  ['focaccia-hydration', 'How wet should our focaccia be? Session 3, 2 October 2026'],
  [
    'flatbread-hydration',
    'Does a wetter flatbread puff and please more? Session 1, 21 November 2026',
  ],
])(
  'the weigh sheet of %s names its trial and session, and has a box at every weight',
  (name, head) => {
    const { plan, whole, html, words } = printed(name)
    expect(words).toContain(head)
    const sheet = weighSheet(plan, whole.kitchen)
    const weights = sheet.rows.flatMap(({ cells }) => cells).filter((line) => line)
    expect(count(html, boxes)).toBe(weights.length + sheet.doses.length)
    // A blank beside every weight that is read off a scale: a preferment that goes in whole was weighed as its parts.
    const read = sheet.rows.filter(({ what }) => what !== 'all-of-preferment')
    for (const { cells, key } of read) {
      const [row] =
        [...html.matchAll(/<tr.*?<\/tr>/gs)]
          .map(([text]) => text)
          [sheet.rows.findIndex((one) => one.key === key) + 1]?.match(/.*/s) ?? []
      expect(count(row ?? '', /blank/g)).toBe(cells.filter((line) => line).length)
    }
    for (const line of ['Water at, °C', 'Dough from the mixer, °C', 'Worked in: flour, water, g'])
      expect(words).toContain(line)
    const letters = whole.sessions.at(-1)?.dealt.letters ?? []
    for (const { letter, levelId } of letters) {
      const level = plan.levels.find(({ id }) => id === levelId)
      expect(words).toContain(` ${letter} ${level?.value}`)
    }
  },
)

test('before a session begins, its number and day are blanks and no dough has a letter', () => {
  const { words } = printed('focaccia-hydration', [])
  expect(words).toContain('How wet should our focaccia be? Session on Grams of each dough')
  expect(words).not.toMatch(/Session \d/)
  expect(words).not.toMatch(/ [A-E] \d\d/)
})

// By hand: five stand on one page, six as two threes, eleven as 4, 4 and 3.
test.each([
  [1, [[0]]],
  [5, [[0, 1, 2, 3, 4]]],
  [
    6,
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
  ],
  [
    11,
    [
      [0, 1, 2, 3],
      [4, 5, 6, 7],
      [8, 9, 10],
    ],
  ],
])('%i doughs are shared out over pages of at most five', (doughs, pages) => {
  expect(columnsOfPages(doughs, 5)).toEqual(pages)
})

test('seven doughs stand on two pages, each under the head of the paper, none twice', () => {
  const whole = sampleTrial('focaccia-hydration')
  const [plan] = whole.plans
  const [first] = plan?.levels ?? []
  if (!plan || !first) throw new Error('the focaccia has no levels')
  const levels = [60, 63, 66, 70, 74, 78, 82].map((value) => ({
    ...{ ...first, id: `level-${value}`, label: String(value), value },
  }))
  const html = onPaper(<PrintedWeighSheet />, { ...plan, levels }, { ...whole, sessions: [] })
  const tables = [...html.matchAll(/<thead>.*?<\/thead>/gs)].map(([head]) => wordsOf(head))
  expect(tables).toEqual(['60 63 66 70', '74 78 82'])
  expect(count(html, /Weigh sheet, \d of 2/g)).toBe(2)
})
