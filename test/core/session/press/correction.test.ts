import { expect, test } from 'vitest'
import type { Event } from '@/core/session/event-record.ts'
import { correctable, corrected } from '@/core/session/press/correction.ts'
import { isOutside } from '@/core/session/press/usual-readings.ts'
import { wholeTrialOf } from '../../../whole-trial-of.ts'

const of = (kind: Event['kind']) => {
  const found = wholeTrialOf().events.find((event) => event.kind === kind)
  if (!found) throw new Error(`the whole trial has no ${kind}`)
  return found
}
const nothing = { value: null, text: '', at: 0 }

test('what carries a number can be mended in it, what carries words in them, the rest in its time alone', () => {
  expect(correctable(of('weighed')).number?.unit).toBe('g')
  expect(correctable(of('temperature')).number?.unit).toBe('°C')
  expect(correctable(of('note')).text).not.toBe('')
  expect(correctable(of('bake-in'))).toEqual({})
})

test('a correction says the same thing rightly and cites what it corrects; the notebook stamps it anew', () => {
  const event = of('temperature')
  const mended = corrected(event, { value: 23.5, text: '', at: event.at - 4 * 60_000 })
  expect(mended).toMatchObject({
    kind: 'temperature',
    celsius: 23.5,
    about: event.about,
    corrects: event.id,
    at: event.at - 4 * 60_000,
  })
  for (const key of ['id', 'device', 'count', 'zone']) expect(mended).not.toHaveProperty(key)
})

test('a correction left as it was keeps number and words', () => {
  const weighed = of('weighed')
  expect(corrected(weighed, nothing)).toMatchObject(
    weighed.kind === 'weighed' ? { grams: weighed.grams } : {},
  )
  expect(corrected(of('note'), { ...nothing, text: 'wetter than it looked' })).toMatchObject({
    text: 'wetter than it looked',
  })
})

test('a temperature is mended within what its thing can have: no dough is at 250 °C, an oven floor may be', () => {
  const reading = of('temperature')
  if (reading.kind !== 'temperature') throw new Error('a reading is asked for')
  const check = (what: typeof reading.of, celsius: number) =>
    isOutside(celsius, correctable({ ...reading, of: what }).number?.ends ?? { least: 0, most: 0 })
  expect(check('dough', 25)).toBe(false)
  expect(check('dough', 250)).toBe(true)
  // Liquid water at sea level: 0 to 100 °C.
  expect(check('water', 100)).toBe(false)
  expect(check('water', 101)).toBe(true)
  expect(check('oven-floor', 250)).toBe(false)
})

test('of a photo its caption and the width of what it shows can be said later, mended, and taken away again', () => {
  const photo = of('photo')
  expect(correctable(photo).number).toMatchObject({ value: null, unit: 'cm', mayLack: true })
  const said = corrected(photo, { value: 24.5, text: 'the crumb', at: photo.at })
  expect(said).toMatchObject({ widthMillimetres: 245, caption: 'the crumb', corrects: photo.id })
  // 1.1 × 10 is 11.000000000000002 in binary figures.
  const narrow = corrected(photo, { value: 1.1, text: '', at: photo.at })
  expect(narrow).toMatchObject({ widthMillimetres: 11 })
  const again = corrected({ ...photo, ...said } as Event, { value: null, text: ' ', at: photo.at })
  expect(again).not.toHaveProperty('widthMillimetres')
  expect(again).not.toHaveProperty('caption')
})
