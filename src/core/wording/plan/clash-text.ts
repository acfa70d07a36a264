import type { Plan } from '@/core/trial/plan-record.ts'
import { listText } from '@/core/wording/words/list-text.ts'

/** The parts of a plan as its page names them; a part that is not here goes by the word of the record. */
const partNames: Record<string, string> = {
  question: 'the question',
  expectation: 'the expectation',
  factor: 'what changes',
  levels: 'the levels',
  formula: 'the formula',
  flights: 'the flights',
  steps: 'the method',
  responses: 'the responses',
  mainResponseId: 'the main response',
  tasters: 'the tasters',
  plannedSessions: 'the sessions',
  kitchenIds: 'the kitchen',
  temperature: 'the temperatures',
}

/** What stands at a path of a merged plan, where it is one text or number; null of anything longer. Items of a list go by id. */
function wordAt(plan: Plan, path: string): string | null {
  let value: unknown = plan
  for (const key of path.split('/').slice(1)) {
    if (value === null || typeof value !== 'object') return null
    value = Array.isArray(value)
      ? value.find((item) => [item.id, item.tasterId, item.ingredientId].includes(key))
      : Object.entries(value).find(([name]) => name === key)?.[1]
  }
  return typeof value === 'string' || typeof value === 'number' ? String(value) : null
}

const shortened = (word: string) => (word.length > 80 ? `${word.slice(0, 80)}…` : word)

/** What two windows changed at once in a plan: where, what stands here, and the other window's word. */
export function clashText(paths: readonly string[], here: Plan, other: Plan): string {
  const parts = [...new Set(paths.map((path) => path.split('/')[1] ?? ''))]
  const where = listText(parts.map((part) => partNames[part] ?? `“${part}”`))
  const [path = ''] = paths
  const [mine, theirs] = [wordAt(here, path), wordAt(other, path)]
  const words =
    paths.length === 1 && mine !== null && theirs !== null
      ? `“${shortened(mine)}” stands; the other window wrote “${shortened(theirs)}”.`
      : 'What was written here stands; the other window’s is kept while this message is open.'
  return `Another window changed ${where} at the same time. ${words}`
}
