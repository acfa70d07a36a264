import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings, Verdict } from '@/core/findings/response-findings-shape.ts'
import { decimalText, plainNumber, signedText, withUnit } from '@/core/units/number-text.ts'
import { levelNameText, placeText } from '@/core/wording/words/level-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { withinScale } from '@/core/wording/words/within-scale.ts'
import { lowerRung, type Naming, type RungName, sameWay } from './answer-of-rung.ts'
import { boundText } from './best-sentence.ts'
import { differenceDecimals } from './difference-text.ts'

/** The answer in two halves: what the pieces or doughs show, and what is known of the factor itself. */
export interface VerdictSentence {
  shown: string
  known: string
}

/**
 * The sentence a Findings page opens with. A higher rung never hides a lower one, and a large p is never "no effect":
 * what is not settled is said with the interval it could still be.
 */
export function verdictSentence(found: ResponseFindings, naming: Naming): VerdictSentence {
  const rung = lowerRung(found)
  const factor = found.verdict.factor
  const name = naming.factor.name.toLocaleLowerCase('en')
  if (rung === null) {
    if (!isPresent(factor))
      return {
        shown: `Nothing can be said of ${lower(found.name)} yet.`,
        known: unknownFactor(found, name, naming),
      }
    return { shown: factorAlone(found, factor, naming), known: '' }
  }
  const lowerVerdict = found.verdict[rung]
  if (!isPresent(lowerVerdict)) throw new Error('the lower rung was chosen for its verdict')
  return {
    shown: shownByLower(found, rung, lowerVerdict, naming),
    known: isPresent(factor)
      ? knownOfFactor(lowerVerdict, factor, found, naming, name)
      : unknownFactor(found, name, naming),
  }
}

/** What these pieces or doughs show. */
function shownByLower(
  found: ResponseFindings,
  rung: 'pieces' | 'doughs',
  verdict: Verdict,
  naming: Naming,
): string {
  const who = rung === 'doughs' ? 'These doughs' : 'These pieces'
  switch (verdict.kind) {
    case 'matters':
      return `${who} differ, and by more than your margin of ${plainNumber(verdict.margin ?? 0)}: ${highest(found, spokenFor(found, rung), verdict, naming)}.`
    case 'differs':
      return `${who} differ, though by how much is unsure: ${highest(found, spokenFor(found, rung), verdict, naming)}.`
    case 'too-small':
      return `${who} make no difference in ${lower(found.name)} that would matter to you: no two levels are more than ${plainNumber(verdict.margin ?? 0)} apart.`
    case 'leans':
      return `${who} lean: ${comparison(found, verdict, naming)}, but chance alone could do that.`
    case 'not-settled':
      return `${who} do not settle it: ${couldBe(found, verdict, naming)}.`
  }
}

/** What is known of the factor where no taster stands between: measurements of pieces and doughs. */
function factorAlone(found: ResponseFindings, verdict: Verdict, naming: Naming): string {
  const name = asSentenceStart(naming.factor.name)
  switch (verdict.kind) {
    case 'matters':
      return `${name} itself matters, by more than your margin of ${plainNumber(verdict.margin ?? 0)}: ${highest(found, 'factor', verdict, naming)}.`
    case 'differs':
      return `${name} itself makes a difference, though how large is unsure: ${highest(found, 'factor', verdict, naming)}.`
    case 'too-small':
      return `${name} itself makes no difference in ${lower(found.name)} that would matter to you: no two levels are more than ${plainNumber(verdict.margin ?? 0)} apart.`
    case 'leans':
      return `${name} itself leans: ${comparison(found, verdict, naming)}, but chance alone could do that.`
    case 'not-settled':
      return `What ${lower(naming.factor.name)} does to ${lower(found.name)} is not settled: ${couldBe(found, verdict, naming)}.`
  }
}

function knownOfFactor(
  lowerVerdict: Verdict,
  factor: Verdict,
  found: ResponseFindings,
  naming: Naming,
  name: string,
): string {
  const same = sameWay(lowerVerdict, factor)
  switch (factor.kind) {
    case 'matters':
      return same
        ? `It holds for ${name} itself, whenever the ${naming.unit === 'batch' ? 'doughs' : 'pieces'} are made again${itsBest(found, naming)}.`
        : `${asSentenceStart(name)} itself matters: ${comparison(found, factor, naming)}.`
    case 'differs':
      return same
        ? `Made again they differ too, so ${name} itself has a part in it, though how large is unsure${itsBest(found, naming)}.`
        : `${asSentenceStart(name)} itself has a part: ${comparison(found, factor, naming)}; how large is unsure.`
    case 'too-small':
      return `Of ${name} itself it is known that any difference is too small to matter to you.`
    case 'leans':
      return same
        ? `What is known of ${name} itself leans the same way; another session could settle it.`
        : `What is known of ${name} itself leans another way: ${comparison(found, factor, naming)}.`
    case 'not-settled':
      return `Of ${name} itself nothing is settled yet: ${couldBe(found, factor, naming)}.`
  }
}

function unknownFactor(found: ResponseFindings, name: string, { unit }: Naming): string {
  const absent = found.verdict.factor
  if (isPresent(absent)) return ''
  const made = unit === 'batch' ? 'make the doughs again' : 'make the pieces again'
  if (absent.reason === 'needs-two-sessions' || absent.reason === 'needs-two-blocks') {
    const more =
      absent.sessions === undefined
        ? ''
        : ` (${countText(absent.sessions, 'session')} in all would answer)`
    return `Of ${name} itself one session cannot speak: to know, ${made}${more}.`
  }
  return `Of ${name} itself these data cannot speak.`
}

/** The rung's own best where it lies inside the range and is bounded, else the pair that differs most. */
function highest(
  found: ResponseFindings,
  rung: RungName,
  verdict: Verdict,
  naming: Naming,
): string {
  return bestPart(found, rung, naming) ?? comparison(found, verdict, naming)
}

/** "liking is best near 73.6 %, somewhere between 71.6 and 75.8 %"; null where the rung bounds no best. */
function bestPart(found: ResponseFindings, rung: RungName, naming: Naming): string | null {
  const best = insideBest(found, rung)
  if (best === null) return null
  const { vertex, fieller } = best
  const unit = naming.factor.unitOfMeasure
  const levels = found.levels.map((level) => level.level)
  return `${lower(found.name)} is best near ${withUnit(placeText(vertex, levels), unit)}${boundText(fieller, levels, unit)}`
}

/** What the second half adds on the best: nothing where the first has said it for both. */
function itsBest(found: ResponseFindings, naming: Naming): string {
  const rung = lowerRung(found)
  const said = rung === null ? null : bestPart(found, rung, naming)
  const best = bestPart(found, 'factor', naming)
  if (best === null) return said === null ? '' : ', though where its best lies is not bounded yet'
  return rung !== null && said !== null && spokenFor(found, rung) === 'factor' ? '' : `; ${best}`
}

/**
 * The rung whose best the first half names: the factor's own where it speaks the same way and its interval holds the
 * lower rung's best, so that one place is said once, and as wide as the factor itself bounds it.
 */
function spokenFor(found: ResponseFindings, rung: 'pieces' | 'doughs'): RungName {
  const [near, factor] = [found.verdict[rung], found.verdict.factor]
  if (!isPresent(near) || !isPresent(factor) || !sameWay(near, factor)) return rung
  if (factor.kind !== 'matters' && factor.kind !== 'differs') return rung
  const [said, own] = [insideBest(found, rung), insideBest(found, 'factor')]
  if (!said || !own) return rung
  const { low, high } = own.fieller
  return (low ?? Number.NEGATIVE_INFINITY) <= said.vertex &&
    said.vertex <= (high ?? Number.POSITIVE_INFINITY)
    ? 'factor'
    : rung
}

/** A best inside the range that its rung bounds as one interval; null else, and where a target is met instead. */
function insideBest(found: ResponseFindings, rung: RungName) {
  const answer = found[rung]
  if (!isPresent(answer) || !isPresent(answer.best)) return null
  const { answer: where, vertex, fieller, crossing } = answer.best
  if (crossing !== undefined || where !== 'inside') return null
  if (!isPresent(vertex) || !isPresent(fieller) || fieller.kind !== 'interval') return null
  return { vertex, fieller }
}

/** "liking is 1.7 higher at 74 % than at 66 %", with its interval. */
function comparison(found: ResponseFindings, verdict: Verdict, naming: Naming): string {
  const [a, b] = verdict.between
  const up = verdict.difference >= 0
  const unit = naming.factor.unitOfMeasure
  const limits = up ? verdict : { low: -verdict.high, high: -verdict.low }
  const { low, high } = withinScale(limits, naming.scale)
  const decimals = differenceDecimals(verdict.difference)
  return `${lower(found.name)} is ${decimalText(Math.abs(verdict.difference), decimals)} higher at ${levelNameText(up ? b : a, unit)} than at ${levelNameText(up ? a : b, unit)} (${signedText(low, decimals)} to ${signedText(high, decimals)})`
}

function couldBe(found: ResponseFindings, verdict: Verdict, naming: Naming): string {
  const [a, b] = verdict.between
  const unit = naming.factor.unitOfMeasure
  const { low, high, whole } = withinScale(verdict, naming.scale)
  const decimals = differenceDecimals(high - low)
  const change = whole
    ? 'anything its scale allows'
    : `anything from ${signedText(low, decimals)} to ${signedText(high, decimals)}`
  return `from ${levelNameText(a, unit)} to ${levelNameText(b, unit)} ${lower(found.name)} could change by ${change}`
}

function lower(name: string): string {
  return name.slice(0, 1).toLocaleLowerCase('en') + name.slice(1)
}
