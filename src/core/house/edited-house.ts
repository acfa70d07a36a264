import type { FormulaProblem } from '@/core/formula/formula-problem.ts'
import { formulaProblems } from '@/core/formula/formula-problems.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { type TypedNumber, typedNumber } from '@/core/units/typed-number.ts'
import type { HouseRevision } from './house-record.ts'

/** What can be typed over in a house formula, by its key: "percent/ID", "share/ID", "wait/ID" (minutes), and "note". */
export type TypedOver = Readonly<Partial<Record<string, string>>>

/** Why a field cannot stand as it is typed. */
export type FieldTrouble =
  | { key: string; text: string; is: 'unread'; why: Extract<TypedNumber, { ok: false }> }
  | { key: string; is: 'missing' }
  | { key: string; is: 'outside'; least: number; most: number; unit: string }

export type EditedHouse =
  | { ok: true; revision: HouseRevision }
  | { ok: false; fields: FieldTrouble[]; formula: FormulaProblem[] }

const ends = {
  percent: { least: 0, most: 1000, unit: '%' },
  share: { least: 0, most: 100, unit: '%' },
  wait: { least: 0, most: 86_400, unit: 'min' },
} as const

/**
 * A house formula's next state from what was typed over the one in force; what was not typed stays. Percents are of all flour, a
 * share is a preferment's of all flour, a wait is in minutes ("14h" is read too). Refused where a field cannot be read, or where
 * the formula it makes could not be weighed.
 */
export function editedHouse(before: HouseRevision, typed: TypedOver): EditedHouse {
  const fields: FieldTrouble[] = []
  const read = (of: keyof typeof ends, id: string, kept: number): number => {
    const key = `${of}/${id}`
    const text = typed[key]
    if (text === undefined) return kept
    const { least, most, unit } = ends[of]
    const found = typedNumber(text, unit)
    if (!found.ok) fields.push({ key, text, is: 'unread', why: found })
    else if (found.value === null) fields.push({ key, is: 'missing' })
    else if (found.value < least || found.value > most)
      fields.push({ key, is: 'outside', least, most, unit })
    else return found.value
    return kept
  }
  const formula: Formula = {
    ...before.formula,
    ingredients: before.formula.ingredients.map((one) => ({
      ...one,
      percent: read('percent', one.id, one.percent),
    })),
    preferments: before.formula.preferments.map((one) => ({
      ...one,
      flourSharePercent: read('share', one.id, one.flourSharePercent),
    })),
  }
  const steps = before.steps.map((step) => ({
    ...step,
    waitSeconds: Math.round(read('wait', step.id, step.waitSeconds / 60) * 60),
  }))
  const stops = formulaProblems(formula).filter(({ severity }) => severity === 'stop')
  if (fields.length > 0 || stops.length > 0) return { ok: false, fields, formula: stops }
  const note = (typed.note ?? '').trim()
  return { ok: true, revision: { ...before, formula, steps, note } }
}
