import type { AtTable } from '@/core/trial/at-table.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** A change of how servings are offered; null takes a field out. */
export type AtTableChange = { [Field in keyof AtTable]?: AtTable[Field] | null }

/** The plan with its servings offered otherwise. What is nothing is left out of the record, and so is the whole when it is empty. */
export function withAtTable(plan: Plan, change: AtTableChange): Plan {
  const { atTable, ...rest } = plan
  const fields = Object.entries({ ...atTable, ...change }).filter(
    ([, value]) =>
      value !== null && value !== undefined && value !== false && value !== 0 && !isEmpty(value),
  )
  return fields.length === 0 ? rest : { ...rest, atTable: Object.fromEntries(fields) }
}

const isEmpty = (value: unknown) => Array.isArray(value) && value.length === 0
