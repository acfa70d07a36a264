import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import type { Shown } from '@/core/findings/evidence/evidence-shape.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { bendWeights, lineWeights } from '@/core/statistics/block-model/level-contrast.ts'

/** What a conclusion may claim, each with its own bound on how often it may be false. */
export const claims = [
  'line',
  'size',
  'bend',
  'inside',
  'pairs',
  'too-small',
  'as-good',
  'place',
] as const
export type Claim = (typeof claims)[number]

/** Smaller true differences are rounding of the shapes. */
const nothing = 1e-9

/**
 * The claims a conclusion makes, and which of them are false of the true effects of the levels (known by their values): a line or bend of another sign or
 * none, a size or pair of another sign or none, a best in between that is not, *too small* or *as good* beyond the margin, a stretch without the best.
 */
export function claimsOf(
  conclusion: Conclusion,
  values: readonly number[],
  effects: readonly number[],
): Map<Claim, 'true' | 'false'> {
  const said = new Map<Claim, 'true' | 'false'>()
  const say = (claim: Claim, holds: boolean) => {
    if (said.get(claim) !== 'false') said.set(claim, holds ? 'true' : 'false')
  }
  const effectAt = (levelId: string) => effects[values.indexOf(Number(levelId))] as number
  const most = Math.max(...effects)
  for (const one of conclusion.shown) sayShown(one, values, effects, effectAt, say)
  const { tooSmall, ending, place } = conclusion
  if (isPresent(tooSmall) && tooSmall.allPairs)
    say('too-small', most - Math.min(...effects) < tooSmall.margin - nothing)
  const { asGood } = conclusion
  if (ending.level !== null && isPresent(asGood))
    say('as-good', most - effectAt(ending.level) < asGood.margin - nothing)
  if (isPresent(place)) {
    const best = values.filter((_, at) => most - (effects[at] as number) < nothing)
    say(
      'place',
      best.some((value) => value >= place.low && value <= place.high),
    )
  }
  return said
}

function sayShown(
  one: Shown,
  values: readonly number[],
  effects: readonly number[],
  effectAt: (levelId: string) => number,
  say: (claim: Claim, holds: boolean) => void,
): void {
  const sum = (weights: readonly number[]) =>
    weights.reduce((total, weight, at) => total + weight * (effects[at] as number), 0)
  if (one.is === 'line') {
    const line = sum(lineWeights(values))
    say('line', one.goes === 'rises' ? line > nothing : line < -nothing)
    if (one.size) {
      const [first, last] = one.size.between
      const difference = effectAt(last) - effectAt(first)
      say('size', difference >= one.size.low && difference <= one.size.high)
    }
  }
  if (one.is === 'bend') {
    const bend = sum(bendWeights(values))
    say('bend', one.middle === 'high' ? bend < -nothing : bend > nothing)
    if (one.inside) {
      const sign = one.middle === 'high' ? 1 : -1
      const inner = effects.slice(1, -1)
      const mean = inner.reduce((total, effect) => total + effect / inner.length, 0)
      const ends = [effects[0] as number, effects.at(-1) as number]
      say(
        'inside',
        ends.every((end) => sign * (mean - end) > nothing),
      )
    }
  }
  for (const { a, b, difference } of one.pairs) {
    const truth = effectAt(b) - effectAt(a)
    say('pairs', Math.abs(truth) > nothing && truth > 0 === difference > 0)
  }
}
