import { expect, test } from 'vitest'
import { codeWidth } from '@/app/kit/page/whole-modules.ts'

test('every module of a code stands on as many whole pixels of the screen', () => {
  // A code of 57 modules with its margin of four on each side, in 324 px of a phone: 4 pixels a module at one for one (260 px),
  // 14 at three (303.3 px).
  expect(codeWidth(324, 65, 1)).toBe(260)
  expect(codeWidth(324, 65, 3)).toBeCloseTo(910 / 3, 9)
  for (const ratio of [1, 1.25, 1.5, 2, 2.625, 3])
    for (const modules of [33, 45, 65, 85]) {
      const perModule = (codeWidth(324, modules, ratio) * ratio) / modules
      expect(perModule).toBeCloseTo(Math.round(perModule), 9)
      expect(codeWidth(324, modules, ratio)).toBeLessThanOrEqual(324)
    }
  expect(codeWidth(20, 33, 1)).toBe(20)
})
