import { expect, test } from 'vitest'
import { gramsFrom } from '@/core/units/mass.ts'
import { readNumber } from '@/core/units/read-number.ts'
import {
  celsiusDifferenceFromFahrenheit,
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
} from '@/core/units/temperature.ts'

const value = (text: string) => {
  const read = readNumber(text, { units: ['%', 'g'] })
  return read.ok ? read.value : read.reason
}

test.each([
  ['66.4', 66.4],
  ['66,4', 66.4],
  [' 66,4 % ', 66.4],
  ['1 200', 1200],
  ['1\u2009200,5', 1200.5],
  ['12\u202f000 g', 12000],
  ['.5', 0.5],
  ['5.', 5],
  ['\u22123', -3],
  ['-0', 0],
  ['1e3', 1000],
  ['1e-3', 0.001],
])('reads %j as %d', (text, expected) => {
  expect(value(text)).toBe(expected)
})

test.each([
  ['', 'empty'],
  ['\u2009 ', 'empty'],
  ['NaN', 'not-a-number'],
  ['Infinity', 'not-a-number'],
  ['🍞', 'not-a-number'],
  ['7🍞', 'not-a-number'],
  ['12 34', 'not-a-number'],
  ['-', 'not-a-number'],
  ['.', 'not-a-number'],
  ['e5', 'not-a-number'],
  ['1,234,5', 'two-separators'],
  ['1.234,5', 'two-separators'],
  ['1e308', 'too-large'],
  ['1e999', 'too-large'],
  ['-1e308', 'too-small'],
  ['1/2', 'fraction'],
  ['1½', 'fraction'],
  ['60-65', 'range'],
  ['60 – 65 %', 'range'],
  ['60 to 65', 'range'],
  ['3 cups', 'unknown-unit'],
])('refuses %j as %s', (text, reason) => {
  expect(value(text)).toBe(reason)
})

test('bounds are named', () => {
  expect(readNumber('151', { most: 150 })).toEqual({ ok: false, reason: 'too-large', most: 150 })
  expect(readNumber('-1', { least: 0 })).toEqual({ ok: false, reason: 'too-small', least: 0 })
})

test('masses: the international pound and ounce (exact, 1959), water by the millilitre', () => {
  expect(gramsFrom(1, 'lb')).toBe(453.59237)
  expect(gramsFrom(16, 'oz')).toBeCloseTo(453.59237, 9)
})

test('temperatures: fixed points of both scales', () => {
  expect([32, 212, -40].map(celsiusFromFahrenheit)).toEqual([0, 100, -40])
  expect([0, 100, -40].map(fahrenheitFromCelsius)).toEqual([32, 212, -40])
  expect(celsiusDifferenceFromFahrenheit(9)).toBe(5)
})
