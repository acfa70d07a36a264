import { describe, expect, test } from 'vitest'
import { typedTimeOfDay } from '@/core/session/press/time-of-day.ts'
import { type Manner, manner, plainManner, writtenAs } from '@/core/units/manner.ts'
import {
  exactMass,
  heavyText,
  massText,
  plainMass,
  scaleStepText,
  shownMass,
  signedMass,
  typedGrams,
  weightText,
} from '@/core/units/mass-text.ts'
import { decimalText, plainNumber, signedText, thousandsText } from '@/core/units/number-text.ts'
import { degreesRange, plainDegrees, stepsWithSign } from '@/core/units/temperature-text.ts'
import { typedNumber } from '@/core/units/typed-number.ts'
import { civilTime, clockTime } from '@/core/wording/words/civil-time.ts'
import { figuresExample, writtenInText } from '@/core/wording/words/manner-text.ts'

const inManner = <Made>(chosen: Partial<Manner>, write: () => Made): Made =>
  writtenAs({ ...plainManner, ...chosen }, write)
const ounces = { mass: 'ounce' } as const
const comma = { decimal: 'comma' } as const

// The avoirdupois ounce is 28.349523125 g exactly (international yard and pound agreement, 1959; from memory, computed here).
describe('weights in ounces', () => {
  test.each([
    [28.349523125, null, '1.000 oz'],
    [453.59237, 1, '16.00 oz'],
    [372, 1, '13.12 oz'],
    [6.5, 0.1, '0.229 oz'],
    [0.35, 0.01, '0.0123 oz'],
  ])('%d g on a scale of %s g are %s', (grams, step, text) => {
    expect(inManner(ounces, () => weightText(grams, step))).toBe(text)
  })

  // A scale that reads in steps of 0.05 oz is kept as one of 1.41747615625 g.
  test('a scale that reads in ounces shows the decimals of its own step', () => {
    const step = 28.349523125 * 0.05
    expect(inManner(ounces, () => weightText(step * 247, step))).toBe('12.35 oz')
    expect(weightText(step * 247, step)).toBe('350.1 g')
  })

  test('two weights that a scale keeps apart are written apart', () => {
    for (const step of [5, 1, 0.5, 0.1, 0.01])
      for (let count = 1; count < 400; count += 1) {
        const [one, next] = inManner(ounces, () => [
          weightText(count * step, step),
          weightText((count + 1) * step, step),
        ])
        expect(one).not.toBe(next)
      }
  })

  test('what was typed comes back as it was typed, and the grams of a plan as they were', () => {
    inManner(ounces, () => {
      for (const typed of [0.125, 0.5, 1.05, 12.375, 17.64, 35.274])
        expect(shownMass(typedGrams(typed))).toBe(typed)
      for (const grams of [0.35, 6.5, 280, 1000])
        expect(typedGrams(exactMass(grams))).toBeCloseTo(grams, 9)
    })
  })

  test('a scale’s step stands in the unit that the scale reads in', () => {
    inManner(ounces, () => {
      expect(scaleStepText(28.349523125 * 0.05)).toBe('0.05 oz')
      expect([scaleStepText(1), scaleStepText(0.01)]).toEqual(['1 g', '0.01 g'])
    })
  })

  test('heavy, light and signed weights', () => {
    inManner(ounces, () => {
      expect(heavyText(4535.9237, 1)).toBe('10.0 lb')
      expect(plainMass(280)).toBe('9.88 oz')
      expect(plainMass(3.5436903906)).toBe('0.125 oz')
      expect(massText(5, 0)).toBe('0.18 oz')
      expect(signedMass(-5, 0)).toBe('−0.18')
      expect(signedMass(5, 0)).toBe('+0.18')
    })
    expect([heavyText(4300, 1), plainMass(280), massText(5, 0)]).toEqual(['4.3 kg', '280 g', '5 g'])
  })
})

describe('temperatures in °F', () => {
  test('a temperature has the offset, a difference has not', () => {
    inManner({ temperature: 'fahrenheit' }, () => {
      expect(plainDegrees(24)).toBe('75.2 °F')
      expect(degreesRange(20, 25)).toBe('68 to 77 °F')
      expect(stepsWithSign(1, 1)).toBe('1.8 °F')
    })
    expect([plainDegrees(24), degreesRange(20, 25)]).toEqual(['24 °C', '20 to 25 °C'])
  })
})

describe('the decimal mark', () => {
  test('is written in every figure', () => {
    inManner(comma, () => {
      expect(decimalText(-1.25, 2)).toBe('−1,25')
      expect(plainNumber(66.5)).toBe('66,5')
      expect(signedText(0.4, 1)).toBe('+0,4')
      expect(signedText(0.04, 1)).toBe('0,0')
      expect(thousandsText(12500)).toBe('12\u202f500')
      expect(weightText(6.5, 0.1)).toBe('6,5 g')
    })
  })

  test.each([
    ['1,5', comma, 1.5],
    ['1.5', comma, 1.5],
    ['1,250', comma, 1.25],
    ['1.250', {}, 1.25],
    ['1.250,5', {}, 1250.5],
    ['1’250', comma, 1250],
  ])('“%s” is read', (text, chosen, value) => {
    expect(inManner(chosen, () => typedNumber(text, 'g'))).toEqual({ ok: true, value })
  })

  test.each([
    ['1,250', {}],
    ['1.250', comma],
  ])('“%s” can be read two ways and is asked', (text, chosen) => {
    expect(inManner(chosen, () => typedNumber(text, 'g'))).toEqual({
      ...{ ok: false, reason: 'thousands-or-decimals' },
    })
  })
})

// Worked by hand: 1 oz = 28.349523125 g; the kitchen's decilitre of water is 100 g.
test.each([
  ['14h', 'min', 840],
  ['1 h 20 min', 'min', 80],
  ['5 kg', 'g', 5000],
  ['½ oz', 'g', 14.1747616],
  ['1 1/2', 'g', 1.5],
  ['1 1/2 oz', 'g', 42.5242847],
  ['2 dl', 'g', 200],
  ['500 g', 'oz', 17.636981],
  ['1,5', 'g', 1.5],
])('“%s” typed where %s is asked is %d', (text, unit, value) => {
  expect(typedNumber(text, unit)).toEqual({ ok: true, value })
})

describe('the time of day', () => {
  const at = (hour: number, minute: number) => Date.UTC(2026, 4, 2, hour, minute)
  test.each([
    [0, 5, '12:05 am', '00:05'],
    [9, 30, '9:30 am', '09:30'],
    [12, 0, '12:00 pm', '12:00'],
    [22, 30, '10:30 pm', '22:30'],
  ])('%d:%d is %s by 12 hours', (hour, minute, twelve, full) => {
    const write = () => clockTime(at(hour, minute), 'UTC', civilTime)
    expect(inManner({ hours: '12' }, write)).toBe(twelve)
    expect(write()).toBe(full)
  })

  test.each([
    ['10:30 pm', 22, 30],
    ['10.30PM', 22, 30],
    ['12 am', 0, 0],
    ['12:15 p.m.', 12, 15],
    ['14h', 14, 0],
    ['14 Uhr', 14, 0],
    ['14h05', 14, 5],
    ['1405', 14, 5],
    ['9', 9, 0],
  ])('“%s” is read', (text, hour, minute) => {
    expect(typedTimeOfDay(text)).toEqual({ hour, minute })
  })

  test.each(['13 pm', '0 am', '25:00', '10:75', '10:30 xm', ''])('“%s” is none', (text) => {
    expect(typedTimeOfDay(text)).toBeNull()
  })

  test('every minute of a day, as it is written, is read as that minute, by 12 hours and by 24', () => {
    for (const hours of ['12', '24'] as const)
      for (let minutes = 0; minutes < 1440; minutes += 1) {
        const [hour, minute] = [Math.floor(minutes / 60), minutes % 60]
        const text = inManner({ hours }, () => clockTime(at(hour, minute), 'UTC'))
        expect(typedTimeOfDay(text)).toEqual({ hour, minute })
      }
  })
})

test('a manner of its own ends with what is written in it, also where that fails', () => {
  const fail = () => {
    throw new Error('no')
  }
  expect(() => inManner(comma, fail)).toThrow('no')
  expect(manner()).toEqual(plainManner)
})

test('a report and the kitchen say in which units they are written', () => {
  const all = { mass: 'ounce', temperature: 'fahrenheit', hours: '12', decimal: 'comma' } as const
  expect(writtenInText()).toBe(
    'Written with weights in grams, temperatures in °C, times by 24 hours and decimals after a point.',
  )
  expect(inManner(all, writtenInText)).toContain('weights in ounces (avoirdupois, 1 oz = 28.35 g)')
  expect(inManner(all, figuresExample)).toBe(
    'So written: 0,441 oz of salt, dough of 76,1 °F, at 2:05 pm.',
  )
})
