import type {
  Formula,
  Ingredient,
  IngredientKind,
  Preferment,
} from '@/core/formula/formula-record.ts'
import { headOfName } from '@/core/formula/head-of-name.ts'
import { yeastFormOfName } from '@/core/formula/kind-of-name.ts'
import { waterContentOf } from '@/core/formula/water-contents.ts'
import type { Part, TextParts } from './parts-of-text.ts'
import { classOfPreferment } from './preferment-class.ts'

/** A formula from its parts: overall percents of all flour, and each preferment by its share of it. Null without flour. */
export function formulaOfParts(
  { byWeight, loose, preferments, overall }: TextParts,
  newId: () => string,
  flourGramsWhenPercent: number,
): Formula | null {
  const ahead = preferments.flatMap(({ parts }) => parts)
  const whole = overall ?? [...loose, ...ahead]
  const flour = sumOf(whole, 'flour')
  if (!(flour > 0)) return null
  const ids = new Map<string, string>()
  const idOf = (part: Part) => ids.get(keyOf(part))
  const ingredients: Ingredient[] = []
  for (const part of overall ? [...overall, ...ahead] : whole) {
    if (ids.has(keyOf(part))) continue
    const id = newId()
    ids.set(keyOf(part), id)
    const amount = whole
      .filter((one) => keyOf(one) === keyOf(part))
      .reduce((sum, one) => sum + one.amount, 0)
    ingredients.push(ingredientOf(id, part, (amount / flour) * 100))
  }
  return {
    ingredients,
    preferments: preferments.map(({ name, parts }): Preferment => {
      const own = sumOf(parts, 'flour')
      return {
        id: newId(),
        name: name.slice(0, 200),
        kind: classOfPreferment(name).kind,
        flourSharePercent: (own / flour) * 100,
        parts: merged(parts).map((part) => ({
          ingredientId: idOf(part) ?? '',
          percent: (part.amount / own) * 100,
        })),
      }
    }),
    batchSize: { by: 'flour', flourGrams: byWeight ? flour : flourGramsWhenPercent },
  }
}

const plainWater =
  /^(?:(?:(?:luke)?warm|cold|cool|tepid|room[- ]temperature|tap|filtered|ice[- ]?cold|(?:hand)?warmes|kaltes|lauwarmes|lauwarm|kalt|tiède|froide|tempérée|tiepida|fredda|a temperatura ambiente)\s+)*(?:water|wasser|eau|acqua)(?:\s+(?:tiède|froide|tempérée|tiepida|fredda|lauwarm|kalt|a temperatura ambiente))*$/iu

/** Names that mean one thing: whatever is only water, and names that differ in case alone. */
function keyOf({ name, kind }: { name: string; kind: IngredientKind }): string {
  const plain = name
    .replace(/\([^()]*\)/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim()
  if (kind === 'water' && plainWater.test(plain.split(',')[0] ?? '')) return 'water'
  return `${kind} ${plain.toLowerCase() || name.toLowerCase()}`
}

/** One row for each thing of a preferment, however often it is named. */
function merged(parts: readonly Part[]): Part[] {
  const made = new Map<string, Part>()
  for (const part of parts) {
    const known = made.get(keyOf(part))
    made.set(keyOf(part), known ? { ...known, amount: known.amount + part.amount } : part)
  }
  return [...made.values()]
}

function ingredientOf(id: string, { name, kind, yeastForm }: Part, percent: number): Ingredient {
  const plain = { id, name: name.slice(0, 200), kind, percent }
  if (kind === 'yeast') return { ...plain, yeastForm: yeastForm ?? yeastFormOfName(name) }
  const dry = kind === 'flour' || kind === 'water' || kind === 'salt'
  const content = dry ? null : waterContentOf(headOfName(name))
  return content ? { ...plain, waterPercent: content.waterPercent } : plain
}

/** The whole of one kind among parts, in their own unit. */
export function sumOf(parts: readonly Part[], kind: IngredientKind): number {
  return parts.reduce((sum, part) => sum + (part.kind === kind ? part.amount : 0), 0)
}
