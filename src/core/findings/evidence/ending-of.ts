import { isPresent } from '@/core/findings/reason.ts'
import type { LevelId } from '@/core/findings/rungs/rung-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Conclusion, Ending } from './conclusion-shape.ts'
import { easiestAmong } from './ease-order.ts'

type Known = Pick<
  Conclusion,
  'rung' | 'shown' | 'tooSmall' | 'asGood' | 'place' | 'caution' | 'allowance'
>

/**
 * How it ends for the baker. A level is good enough when it was named first and passed, is the easiest of those that passed, or all lie within the margin;
 * without a margin, when a size or an inside best is shown and expected, the best of it. It is held back, not adopted,
 * where one session alone speaks, what is shown came as a surprise, freshness or order takes the answer away, or more sessions were made than were written
 * first: then it must be made again. Else *again* when something is shown, *stay* with the usual when nothing is.
 */
export function endingOf(scores: ScoreTable, known: Known): Ending {
  const found = goodEnough(scores, known)
  if (found) {
    const held =
      known.rung !== 'factor' ||
      known.caution !== null ||
      known.allowance?.added != null ||
      known.shown.some(({ unexpected }) => unexpected)
    return { kind: held ? 'hold' : 'adopt', ...found }
  }
  return { kind: known.shown.length > 0 ? 'again' : 'stay', level: null, why: null }
}

function goodEnough(
  scores: ScoreTable,
  { asGood, tooSmall, shown, rung, place }: Known,
): { level: LevelId; why: NonNullable<Ending['why']> } | null {
  if (isPresent(asGood)) {
    const passing = asGood.levels.filter(({ passes }) => passes).map(({ level }) => level)
    if (asGood.named !== null && passing.includes(asGood.named))
      return { level: asGood.named, why: 'named' }
    if (isPresent(tooSmall) && tooSmall.allPairs) {
      const level = easiestAmong(
        scores,
        asGood.levels.map((one) => one.level),
      )
      if (level !== null) return { level, why: 'all-within' }
    }
    const level = asGood.named === null ? easiestAmong(scores, passing) : null
    return level === null ? null : { level, why: 'as-good' }
  }
  if (rung !== 'factor' || asGood.reason !== 'no-margin' || !isPresent(place)) return null
  const sized = shown.some((one) => (one.is === 'line' ? one.size !== null : false))
  const inside = shown.some((one) => one.is === 'bend' && one.inside)
  const [only, other] = place.candidates
  return (sized || inside) && only !== undefined && other === undefined
    ? { level: only, why: 'best-shown' }
    : null
}

/** What to do next, the most pressing first; narrowed only around a best that lies in between. Never adopt what must be made again, never both repeat and confirm. */
export function nextOf({
  ending,
  shown,
  rung,
  caution,
  better,
}: Pick<Conclusion, 'ending' | 'shown' | 'rung' | 'caution' | 'better'>): Conclusion['next'] {
  if (rung !== 'factor' || caution !== null) return ['repeat']
  const good = { higher: 'high', lower: 'low', target: null, neither: null }[better]
  const inside = shown.some((one) => one.is === 'bend' && one.inside && one.middle === good)
  const narrow = inside ? (['narrow'] as const) : []
  switch (ending.kind) {
    case 'adopt':
      return ['adopt', ...narrow]
    case 'hold':
    case 'again':
      return ['confirm', ...narrow]
    case 'stay':
      return ['repeat']
  }
}
