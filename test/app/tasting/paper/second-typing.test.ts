import { expect, test } from 'vitest'
import { cellsOf, endField, endsOf, endTrouble } from '@/app/tasting/paper/sheet-cells.ts'
import { differencesOf } from '@/app/tasting/paper/sheet-differences.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { tastingTrial } from '../../../journeys/tasting-trial.ts'

const whole = tastingTrial({
  tellApart: { test: 'triangle', levelIds: ['level-1', 'level-4'] },
  atTable: { ranking: { ties: true }, asksUsual: true },
})
const view = blindView(whole, whole.sessions[0]?.id ?? '', 'club-2')
const cells = cellsOf(view)
const ends = endsOf(view)
const [order, set, guess] = ends
if (!order || !set || !guess) throw new Error('an order, a set and a guess')
const [a, b, c, d] = order.codes
const first = { [order.field]: `${a} ${b}=${c} ${d}`, [set.field]: `${set.codes[0]}`, usual: '0' }
const again = (texts: Record<string, string>) => ({
  ...first,
  ...Object.fromEntries(Object.entries(texts).map(([field, text]) => [`again/${field}`, text])),
})
const differ = (texts: Record<string, string>) =>
  differencesOf(cells, ends, again(texts)).map(({ label }) => label)

test('a second typing that reads the order otherwise shows it; the same order written otherwise is the same', () => {
  expect(differ({ [order.field]: `${a} ${c}=${b} ${d}` })).toEqual([])
  expect(differ({ [order.field]: ` ${a}, ${c} = ${b}; ${d}` })).toEqual([])
  expect(differ({ [order.field]: `${a} ${b} ${c} ${d}` })).toEqual(['The order, first to last'])
  expect(differ({ [order.field]: `${b} ${a}=${c} ${d}` })).toEqual(['The order, first to last'])
  // One that is still untyped is no difference: the sheet is not whole yet.
  expect(differ({})).toEqual([])
})

test('a ringed code of a set and the guess are compared too, and are settled by what the sheet says', () => {
  const texts = again({ [set.field]: `${set.codes[1]}`, usual: `${a}` })
  const found = differencesOf(cells, ends, texts)
  expect(found.map(({ label }) => label)).toEqual([set.label, guess.label])
  expect(found.map(({ digit }) => digit)).toEqual([false, false])
  expect(found.map(({ trouble }) => trouble('999') === '')).toEqual([false, false])
  const settled = Object.fromEntries(
    found.flatMap(({ fields }) => [
      [fields.first, `${set.codes[1]}`],
      [fields.again, `${set.codes[1]}`],
    ]),
  )
  expect(differencesOf(cells, ends, { ...texts, ...settled })).toEqual([])
})

test('a measured cell that differs may hold more than one digit', () => {
  const height = {
    ...{ id: 'height', name: 'Height', definition: null, liking: false, responseId: 'height' },
    scale: { kind: 'measured', unitOfMeasure: 'mm', measure: 'own' },
  } as const
  const cell = { code: '521', question: height }
  const texts = { 'first/521/height': '41,5', 'again/521/height': '41.5' }
  expect(differencesOf([cell], [], texts)).toEqual([])
  const [one] = differencesOf([cell], [], { ...texts, 'again/521/height': '45.1' })
  expect([one?.digit, one?.trouble('41.5'), one?.maxLength]).toEqual([false, '', 8])
})

test('what was typed of an end the first time keeps its field, so that a sheet begun earlier goes on', () => {
  expect(ends.map((end) => endField('first', end))).toEqual([
    'ranking',
    `set/${set.codes.join('-')}`,
    'usual',
  ])
  expect(endTrouble(order, `${a} ${b}`)).toBe(`The order still lacks ${c} and ${d}.`)
})
