import { expect, test } from 'vitest'
import { TubLabels } from '@/app/plan/paper/tub-labels.tsx'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { tubTicks } from '@/core/trial/tub-ticks.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { sampleTrial } from '../../../cli/sample-file.ts'
import { counting } from '../../../core/plan-edits/plan-of-test.ts'
import { onPaper, wordsOf } from './on-paper.tsx'

const labelsOf = (name: string) => {
  const whole = sampleTrial(name)
  const [plan] = whole.plans
  if (!plan) throw new Error(`${name} has no plan`)
  const html = onPaper(<TubLabels />, plan, whole)
  const [, ...labels] = html.split(/<li class="[^"]*label[^"]*">/)
  return { plan, whole, labels }
}

// The focaccia was worked last on 2 October 2026, the flatbread on 21 November, the loaf on 17 October (invented data). In the
// tub: mix, three folds, rise, pan; mix, two folds, divide, roll out; mix, two folds, shape, proof.
test.each([
  ['focaccia-hydration', 'How wet should our focaccia be?', 'Session 3 2 October 2026', 6],
  [
    'flatbread-hydration',
    'Does a wetter flatbread puff and please',
    'Session 1 21 November 2026',
    5,
  ],
  ['pan-loaf-salt', 'How little salt does our pan loaf need?', 'Session 1 17 October 2026', 5],
])(
  'labels of %s name trial, session, letter and steps, and no level',
  (name, question, when, steps) => {
    const { plan, labels } = labelsOf(name)
    expect(labels).toHaveLength(plan.levels.length)
    for (const [at, label] of labels.entries()) {
      const words = wordsOf(label)
      expect(words).toContain(question)
      expect(words).toContain(when)
      expect(words).toContain(` ${'ABCDE'[at]} Mix `)
      expect(label.match(/class="[^"]*box/g)).toHaveLength(steps)
      for (const level of plan.levels) {
        expect(words).not.toContain(levelText(level, plan.factor.unitOfMeasure))
        expect(label).not.toContain(level.id)
      }
    }
    // Beside its letter each label is the same.
    expect(new Set(labels.map((label) => wordsOf(label).replace(/ [A-E] Mix/, ' Mix'))).size).toBe(
      1,
    )
  },
)

test('a step that the levels have differently is one box on all tubs: their number would say the level', () => {
  const { plan } = labelsOf('focaccia-hydration')
  const folds = withFactorKind(plan, 'fold-count', counting('new'))
  const names = tubTicks(folds).map(({ name, turn }) => [name, turn])
  expect(names.filter(([name]) => name === 'Fold')).toEqual([['Fold', null]])
})
