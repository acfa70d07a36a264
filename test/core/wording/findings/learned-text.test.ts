import { expect, test } from 'vitest'
import type { MixerWork } from '@/core/learned/learned-mixing-work.ts'
import {
  mixingWorkText,
  panelText,
  spreadSourceText,
  untoldText,
  workSourceText,
} from '@/core/wording/findings/learned-text.ts'

const hands: MixerWork = {
  ...{ ok: true, mixedBy: { by: 'hand', way: 'hand' }, untold: [], trialIds: ['a', 'b'] },
  ...{ kilojoulesPerKilogram: 11.24, sdKilojoulesPerKilogram: 0.82, batches: 7 },
  roomHeatChange: 0,
  slope: null,
  factor: null,
}

test('mixing work says its spread and what it rests on', () => {
  expect(mixingWorkText(hands)).toBe(
    'Mixing work 11.2 kJ per kg of flour, give or take 0.8, learned from seven batches in two trials.',
  )
})

test('a slope is said along its factor, in its direction', () => {
  const sloping: MixerWork = {
    ...hands,
    slope: { perLevel: -0.125, meanLevel: 65, leastLevel: 60, mostLevel: 70 },
    factor: { key: 'hydration', name: 'Hydration', unitOfMeasure: '% of flour' },
  }
  expect(mixingWorkText(sloping)).toContain('For each 1 % more of hydration it falls by 0.13.')
})

test('what was not counted says why', () => {
  const untold = [
    { reason: 'dough-not-read', batches: 1 },
    { reason: 'water-not-read', batches: 12 },
  ] as const
  expect(untoldText({ untold: [...untold] })).toBe(
    'Not counted: one batch: no dough temperature was logged within a quarter of an hour of the mix; 12 batches: the water’s temperature was not logged.',
  )
  expect(untoldText(hands)).toBe('')
})

test('a panel says what its trials tell and what they do not', () => {
  const said = { tasterIds: ['x', 'y'], trialIds: ['a', 'b'], scores: 120 }
  const parts = { residual: { sd: 1.14, df: 40 }, tasterLevel: { sd: 0.5, df: 8 } }
  expect(panelText({ ...said, ok: true, parts: { ...parts, piece: null, batch: null } })).toBe(
    'On nine points one answer scatters by 1.1 when all else is the same and tasters’ own preferences by 0.5; learned from 120 scores in two finished trials. Not told by these trials: pieces of one dough and doughs of one level.',
  )
  expect(panelText({ ...said, trialIds: ['a'], ok: false, reason: 'needs-two-trials' })).toContain(
    '120 scores in one finished trial',
  )
})

test('a plan’s power says which spreads are learned and which are common practice', () => {
  const spread = { residual: 0.9, tasterLevel: 0.5, piece: 0.6, batch: 0.4 }
  expect(spreadSourceText(spread, ['residual', 'tasterLevel'], 3)).toBe(
    'Learned from three finished trials of these tasters: 0.9 between single answers and 0.5 between tasters’ own preferences. Common practice on nine points, without a source: 0.6 between pieces of one dough and 0.4 between doughs of one level.',
  )
  expect(spreadSourceText(spread, [], 0)).not.toContain('Learned')
})

test('the water’s mixing work says where it comes from, from least to most', () => {
  const learned = {
    ...{ from: 'learned' as const, batches: 9, way: 'hand' as const },
    ...{ roomHeat: 3.2, giveOrTakeCelsius: 1 },
  }
  expect(
    workSourceText([
      { ...learned, kilojoulesPerKilogram: 9.96 },
      { ...learned, kilojoulesPerKilogram: 11 },
    ]),
  ).toBe('Mixing work learned from nine batches: 10.0 to 11.0 kJ per kg of flour.')
  expect(workSourceText([])).toBe('')
})
