import type { Expectation } from '@/core/trial/expectation.ts'
import type { Held } from '@/core/trial/factor.ts'
import { movesFormula } from '@/core/trial/moves-formula.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { writtenFirst } from '@/core/trial/written-first.ts'
import { plainNumber, shortUnit, withUnit } from '@/core/units/number-text.ts'
import { levelShort, levelText } from '@/core/wording/words/level-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import { responseUnit } from '@/core/wording/words/unit-name.ts'
import { ownWatersText } from './own-waters-text.ts'

/** What a value of a plan's sentence opens. */
export type AskedPart = 'factor' | 'levels' | 'main' | 'expectation' | 'hoped'

/** Plain words, or a value that can be pressed and what it opens. */
export type SentencePiece = string | { value: string; opens: AskedPart }

const held: Record<Held, string> = {
  flour: 'the flour is the same',
  dough: 'all weigh the same',
  piece: 'the pieces weigh the same',
}

const expected: Record<Expectation['direction'], string> = {
  rises: 'to rise',
  falls: 'to fall',
  'best-inside': 'best in between',
  'no-difference': 'to make no difference',
}

/** What changes, in how many doughs, and what stays: "We change hydration of the water from 66 to 82 % in 5 doughs; usual is 74." */
export function changeSentence(plan: Plan): SentencePiece[] {
  const { factor, levels, doughs } = plan
  const opens = 'levels' as const
  const target = targetName(plan)
  const pieces: SentencePiece[] = ['We change ', { value: factor.name, opens: 'factor' }]
  if (target) pieces.push(` ${target.link} `, { value: target.name, opens: 'factor' })
  const made = doughs === 'one' ? 'ways of one dough' : levels.length === 1 ? 'dough' : 'doughs'
  const unit = shortUnit(factor.unitOfMeasure)
  const values = levels.flatMap(({ value }) => (value === null ? [] : [value]))
  if (levels.length === 0) pieces.push(', in ', { value: 'no dough yet', opens }, '.')
  else if (values.length === levels.length && levels.length > 1)
    pieces.push(
      ' from ',
      { value: plainNumber(Math.min(...values)), opens },
      ' to ',
      { value: bound(withUnit(plainNumber(Math.max(...values)), unit)), opens },
      ' in ',
      { value: String(levels.length), opens },
      ` ${made}`,
    )
  else
    pieces.push(': ', {
      value: listText(levels.map((each) => levelText(each, unit))),
      opens,
    })
  if (levels.length > 0) {
    const usual = levels.find(({ control }) => control)
    if (usual) pieces.push('; usual is ', { value: levelShort(usual), opens }, '.')
    else pieces.push('; ', { value: 'none is the usual', opens }, '.')
  }
  const own = doughs === 'one' ? 'divided late from one dough' : 'a dough of its own'
  pieces.push(' Each is ', { value: own, opens: 'factor' })
  if (movesFormula(plan)) pieces.push(', and ', { value: held[factor.held], opens: 'factor' })
  pieces.push('.')
  const waters = ownWatersText(levels)
  if (waters !== null)
    pieces.push(' Each has its own water: ', { value: bound(waters), opens }, '.')
  return pieces
}

/** What decides, what is expected, what does not matter and what is hoped: all written before the first mix. */
export function decideSentence(plan: Plan): SentencePiece[] {
  const { responses, mainResponseId, expectation, levels, factor } = plan
  const main = responses.find(({ id }) => id === mainResponseId)
  const unit = shortUnit(factor.unitOfMeasure)
  const pieces: SentencePiece[] = [
    { value: main ? main.name : 'Nothing yet', opens: 'main' },
    ' decides. We expect ',
  ]
  if (expectation === null) pieces.push({ value: 'nothing yet', opens: 'expectation' })
  else {
    pieces.push('it ', { value: expected[expectation.direction], opens: 'expectation' })
    if (expectation.bestGuess !== null)
      pieces.push(', near ', { value: plainNumber(expectation.bestGuess), opens: 'expectation' })
  }
  if (main) {
    const margin = main.margin === null ? null : pointsText(main.margin, responseUnit(main))
    pieces.push('; ')
    if (margin === null) pieces.push({ value: 'no margin is set', opens: 'main' })
    else pieces.push('less than ', { value: bound(margin), opens: 'main' }, ' does not matter')
  }
  const hoped = levels.find(({ id }) => id === writtenFirst(plan).hopedLevelId)
  pieces.push('. We hope ')
  if (hoped)
    pieces.push({ value: bound(levelText(hoped, unit)), opens: 'hoped' }, ' will do as well.')
  else pieces.push('for ', { value: 'none in particular', opens: 'hoped' }, '.')
  return pieces
}

/** A number and its unit stay together. */
const bound = (text: string) => text.replaceAll(' ', '\u00a0')

function pointsText(margin: number, unit: string): string {
  if (unit === '' || unit === 'points')
    return `${plainNumber(margin)} ${margin === 1 ? 'point' : 'points'}`
  return withUnit(plainNumber(margin), unit)
}

/** What the factor moves, where its own name does not say it. */
function targetName({ factor, formula, steps }: Plan): { link: string; name: string } | null {
  const { acts } = factor
  const name =
    'ingredientId' in acts
      ? formula.ingredients.find(({ id }) => id === acts.ingredientId)?.name
      : 'prefermentId' in acts
        ? formula.preferments.find(({ id }) => id === acts.prefermentId)?.name
        : 'stepId' in acts
          ? steps.find(({ id }) => id === acts.stepId)?.name
          : undefined
  if (name === undefined || name.toLocaleLowerCase('en') === factor.name.toLocaleLowerCase('en'))
    return null
  if ('stepId' in acts) return { link: 'at', name }
  return { link: acts.on === 'hydration' ? 'by the' : 'of', name: midSentence(name) }
}
