import { expect, test } from 'vitest'
import {
  degreesText,
  shownDegrees,
  shownSteps,
  stepsText,
  temperatureEntry,
  temperatureText,
  typedCelsius,
  typedSteps,
} from '@/app/kit/field/temperature-words.ts'

// Fixed points by definition: 0 °C = 32 °F, 100 °C = 212 °F, −40 °C = −40 °F, 24 °C = 75.2 °F.
test('temperatures carry the offset, differences do not', () => {
  expect([0, 100, -40, 24].map((celsius) => shownDegrees(celsius, 'fahrenheit'))).toEqual([
    32, 212, -40, 75.2,
  ])
  expect(typedCelsius(75.2, 'fahrenheit')).toBe(24)
  expect(shownSteps(0.5, 'fahrenheit')).toBe(0.9)
  expect(typedSteps(1.8, 'fahrenheit')).toBe(1)
  expect(temperatureText(-18, 'fahrenheit')).toBe('−0.4 °F')
  expect(degreesText(24, 'fahrenheit', 1)).toBe('75.2')
  expect(stepsText(1.5, 'fahrenheit', 1)).toBe('2.7')
})

test('in °C nothing is changed or rounded', () => {
  expect(shownDegrees(23.456, 'celsius')).toBe(23.456)
  expect(typedCelsius(23.456, 'celsius')).toBe(23.456)
  expect(temperatureText(23.5, 'celsius')).toBe('23.5 °C')
})

test('every tenth of a degree Fahrenheit comes back as it was typed', () => {
  for (let tenths = -1120; tenths <= 12_920; tenths += 1) {
    const typed = tenths / 10
    expect(shownDegrees(typedCelsius(typed, 'fahrenheit'), 'fahrenheit')).toBeCloseTo(typed, 9)
  }
})

test('a field checks and says its ends in the person’s unit', () => {
  const entry = temperatureEntry('fahrenheit', { leastCelsius: -30, mostCelsius: 60 })
  expect(entry.check(140)).toBeUndefined()
  expect(entry.check(141)).toBe('Write a number from −22 to 140 °F.')
  expect(entry.check(-23)).toBe('Write a number from −22 to 140 °F.')
  expect(entry.shown(null)).toBeNull()
  const celsius = temperatureEntry('celsius', { leastCelsius: -30, mostCelsius: 60 })
  expect(celsius.check(61)).toBe('Write a number from −30 to 60 °C.')
})

test('an unfinished text is kept apart by its unit', () => {
  const ends = { leastCelsius: 0, mostCelsius: 100 }
  expect(temperatureEntry('fahrenheit', ends).draftKey('room')).not.toBe(
    temperatureEntry('celsius', ends).draftKey('room'),
  )
})
