import type { Formula } from '@/core/formula/formula-record.ts'
import {
  hydrationPercent,
  prefermentedFlourPercent,
  waterFromEverythingPercent,
} from '@/core/formula/hydration.ts'
import { saidYeastForm } from '@/core/formula/kind-of-name.ts'
import { sumOf } from './formula-of-parts.ts'
import type { Stated } from './line-purpose.ts'
import type { Part, TextParts } from './parts-of-text.ts'
import type { PastedText } from './pasted-text.ts'

/** What the text says twice and not alike, or leaves open though the amounts are known: it is read as weighed, and asked about. */
export type FormulaDoubt =
  | { what: 'percent'; name: string; statedPercent: number; weighedPercent: number }
  | { what: 'total'; of: 'dough' | 'flour' | 'water'; statedGrams: number; linesGrams: number }
  | { what: 'total-percent'; statedPercent: number; linesPercent: number }
  | { what: 'hydration'; statedPercent: number; linesPercent: number }
  | { what: 'prefermented'; statedPercent: number; linesPercent: number }
  | { what: 'pieces'; pieces: number; eachGrams: number; linesGrams: number }
  | { what: 'preferment-total'; name: string; statedGrams: number; linesGrams: number }
  | { what: 'preferment-share'; name: string; takenGrams: number; partsGrams: number }
  | { what: 'more-than-built'; name: string; builtGrams: number; takenGrams: number }
  | { what: 'flours-percent'; percent: number }
  | { what: 'yeast-form'; name: string }
  | { what: 'several-columns' }
  | { what: 'parts-and-whole'; name: string; wholeAmount: number; partsAmount: number }

/** How far a stated figure may lie from the weights by its own rounding: half of its last digit, or a hundredth of it. */
function agrees(stated: number, weighed: number): boolean {
  const [, decimals = ''] = String(stated).split('.')
  return Math.abs(stated - weighed) <= Math.max(0.5 / 10 ** decimals.length, stated / 100) + 1e-9
}

/** Every figure of the text that is not borne out by its lines. */
export function doubtsOf(
  text: PastedText,
  parts: TextParts,
  formula: Formula | null,
): FormulaDoubt[] {
  if (!formula) return []
  const whole = parts.overall ?? [...parts.loose, ...parts.preferments.flatMap((one) => one.parts)]
  return [
    ...percentDoubts(text, parts, whole),
    ...text.stated.flatMap(({ stated, section }) =>
      statedDoubt(stated, section, text, parts, whole, formula),
    ),
    ...sectionDoubts(text, parts),
    ...(parts.byWeight
      ? parts.overdrawn.map(
          (one): FormulaDoubt => ({
            what: 'more-than-built',
            name: one.name,
            builtGrams: one.built,
            takenGrams: one.taken,
          }),
        )
      : []),
    ...parts.otherwise.map(
      (one): FormulaDoubt => ({
        what: 'preferment-share',
        name: one.name,
        takenGrams: one.stated,
        partsGrams: one.parts,
      }),
    ),
    ...flourDoubt(parts, whole),
    ...wholeDoubts(parts),
    ...whole
      .flatMap(({ kind, name, yeastForm }): FormulaDoubt[] =>
        kind === 'yeast' && !yeastForm && saidYeastForm(name) === null
          ? [{ what: 'yeast-form', name }]
          : [],
      )
      .slice(0, 1),
    ...(text.severalColumns ? [{ what: 'several-columns' } as const] : []),
  ]
}

function percentDoubts(text: PastedText, parts: TextParts, whole: readonly Part[]): FormulaDoubt[] {
  if (!parts.byWeight) return []
  const flours = [sumOf(whole, 'flour'), sumOf(parts.loose, 'flour')]
  return text.rows
    .flatMap(({ entries }) => entries)
    .flatMap((entry): FormulaDoubt[] => {
      if ((entry.is !== 'ingredient' && entry.is !== 'preferment') || entry.besidePercent === null)
        return []
      const grams = entry.amount?.grams
      if (grams === null || grams === undefined || parts.refused.has(entry)) return []
      const own = parts.preferments.find((one) => one.parts.some((part) => part.entry === entry))
      const bases = [...flours, own ? sumOf(own.parts, 'flour') : 0].filter((flour) => flour > 0)
      const stated = entry.besidePercent
      if (bases.some((flour) => agrees(stated, (grams / flour) * 100))) return []
      const weighed = (grams / (flours[0] || 1)) * 100
      return [{ what: 'percent', name: entry.name, statedPercent: stated, weighedPercent: weighed }]
    })
}

function statedDoubt(
  stated: Stated,
  section: number,
  text: PastedText,
  parts: TextParts,
  whole: readonly Part[],
  formula: Formula,
): FormulaDoubt[] {
  const dough = whole.reduce((sum, { amount }) => sum + amount, 0)
  if (stated.of === 'hydration') {
    const water = [hydrationPercent(formula) ?? 0, waterFromEverythingPercent(formula) ?? 0]
    const at = text.sections.find((one) => one.at === section)
    const own =
      at?.kind === 'preferment' ? parts.preferments.find((one) => one.name === at.name) : null
    if (own) water.push((sumOf(own.parts, 'water') / sumOf(own.parts, 'flour')) * 100)
    if (water.some((one) => agrees(stated.percent, one))) return []
    return [{ what: 'hydration', statedPercent: stated.percent, linesPercent: water[0] ?? 0 }]
  }
  if (stated.of === 'prefermented') {
    const lines = prefermentedFlourPercent(formula)
    return agrees(stated.percent, lines)
      ? []
      : [{ what: 'prefermented', statedPercent: stated.percent, linesPercent: lines }]
  }
  if (stated.of === 'pieces') {
    const grams = stated.pieces * stated.grams
    const fits = !parts.byWeight || (grams <= dough * 1.02 && grams >= dough * 0.85)
    return fits
      ? []
      : [{ what: 'pieces', pieces: stated.pieces, eachGrams: stated.grams, linesGrams: dough }]
  }
  const lines = stated.of === 'dough' ? dough : sumOf(whole, stated.of)
  const ofSection = sectionSums(text, parts, section)
  if (
    parts.byWeight &&
    stated.grams !== null &&
    ![lines, ...ofSection].some((one) => agrees(stated.grams ?? 0, one))
  )
    return [{ what: 'total', of: stated.of, statedGrams: stated.grams, linesGrams: lines }]
  const percent = (lines / sumOf(whole, 'flour')) * 100
  const fits = [percent, ...ofSection.map((one) => (parts.byWeight ? percent : one))]
  if (
    stated.of === 'dough' &&
    stated.percent !== null &&
    !fits.some((one) => agrees(stated.percent ?? 0, one))
  )
    return [{ what: 'total-percent', statedPercent: stated.percent, linesPercent: percent }]
  return []
}

/** What the lines of one part come to, with the preferments it names and without. */
function sectionSums(text: PastedText, parts: TextParts, section: number): number[] {
  const at = text.sections.find((one) => one.at === section)
  const own = text.rows
    .flatMap(({ entries }) => entries)
    .filter((one) => 'section' in one && one.section === section)
  const sum = own.reduce(
    (all, one) =>
      all +
      ('amount' in one ? ((parts.byWeight ? one.amount?.grams : one.amount?.percent) ?? 0) : 0),
    0,
  )
  const used =
    at?.kind === 'preferment'
      ? (parts.preferments.find((one) => one.name === at.name)?.parts ?? []).reduce(
          (all, { amount }) => all + amount,
          0,
        )
      : 0
  return [sum, used].filter((one) => one > 0)
}

function sectionDoubts(text: PastedText, parts: TextParts): FormulaDoubt[] {
  return text.sections.flatMap((section): FormulaDoubt[] => {
    if (section.kind !== 'preferment' || section.statedGrams === null || !parts.byWeight) return []
    const sums = sectionSums(text, parts, section.at)
    const stated = section.statedGrams
    if (sums.length === 0 || sums.some((one) => agrees(stated, one))) return []
    return [
      {
        what: 'preferment-total',
        name: section.name,
        statedGrams: stated,
        linesGrams: sums[0] ?? 0,
      },
    ]
  })
}

/** Flours told in percents come to 100, either as they stand or with what the preferments hold. */
function flourDoubt(parts: TextParts, whole: readonly Part[]): FormulaDoubt[] {
  if (parts.byWeight) return []
  const sums = [sumOf(whole, 'flour'), sumOf(parts.loose, 'flour')]
  return sums.some((one) => agrees(100, one))
    ? []
    : [{ what: 'flours-percent', percent: sums[0] ?? 0 }]
}

/** Where the whole is given beside its parts, the final dough and the preferments come to it. */
function wholeDoubts(parts: TextParts): FormulaDoubt[] {
  if (!parts.overall || parts.loose.length === 0) return []
  const apart = [...parts.loose, ...parts.preferments.flatMap((one) => one.parts)]
  return (['flour', 'water'] as const).flatMap((kind): FormulaDoubt[] => {
    const [wholeAmount, partsAmount] = [sumOf(parts.overall ?? [], kind), sumOf(apart, kind)]
    return agrees(wholeAmount, partsAmount)
      ? []
      : [{ what: 'parts-and-whole', name: kind, wholeAmount, partsAmount }]
  })
}
