import { expect, test } from 'vitest'
import type { KitchenThing, Mixer, Scale } from '@/core/kitchen/kitchen-record.ts'
import { mixerFit } from '@/core/kitchen/mixer-fit.ts'
import { pickScale } from '@/core/kitchen/pick-scale.ts'
import { scaleFromText } from '@/core/kitchen/scale-from-text.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'

const scale = (resolutionGrams: number, capacityGrams: number): Scale => ({
  id: `s${resolutionGrams}-${capacityGrams}`,
  kind: 'scale',
  name: 'scale',
  resolutionGrams,
  capacityGrams,
})

test('each weight goes to the finest scale that can hold it', () => {
  const scales = [scale(1, 5000), scale(0.01, 200), scale(0.1, 2000)]
  const picked = (grams: number) => {
    const answer = pickScale(grams, scales)
    return answer.ok ? answer.scale.resolutionGrams : answer.reason
  }
  expect([3, 200, 200.01, 2001, 5000.5].map(picked)).toEqual([0.01, 0.01, 0.1, 1, 'over-capacity'])
  expect(pickScale(1, [])).toEqual({ ok: false, reason: 'no-scale' })
  expect(pickScale(1, [scale(1, 100), scale(1, 500)])).toMatchObject({
    scale: { capacityGrams: 500 },
  })
})

test('a scale written as resolution:capacity', () => {
  expect(scaleFromText('0.01:200', 'x')).toMatchObject({
    ok: true,
    scale: { id: 'x', resolutionGrams: 0.01, capacityGrams: 200 },
  })
  expect(scaleFromText('0,1 g:2000 g', 'x')).toMatchObject({ ok: true })
  expect(scaleFromText('5', 'x')).toMatchObject({ reason: 'not-two-numbers' })
  expect(scaleFromText('200:0.1', 'x')).toMatchObject({ reason: 'coarser-than-capacity' })
  expect(scaleFromText('0:100', 'x')).toMatchObject({ reason: 'too-small' })
  expect(scaleFromText('a:100', 'x')).toMatchObject({ reason: 'not-a-number' })
})

test('things of a kind, and only those a plan names', () => {
  const mixer: Mixer = {
    id: 'm',
    kind: 'mixer',
    name: 'm',
    leastDoughGrams: 500,
    mostDoughGrams: 2000,
  }
  const kitchen: KitchenThing[] = [mixer, scale(1, 5000), scale(2, 5000)]
  expect(thingsOfKind(kitchen, 'scale')).toHaveLength(2)
  expect(thingsOfKind(kitchen, 'scale', ['s2-5000', 'm']).map(({ id }) => id)).toEqual(['s2-5000'])
  expect([400, 500, 2000, 2100].map((grams) => mixerFit(mixer, grams))).toEqual([
    'too-little',
    'fits',
    'fits',
    'too-much',
  ])
})
