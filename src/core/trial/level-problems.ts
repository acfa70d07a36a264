import type { Level } from './level.ts'
import { levelBounds } from './level-bounds.ts'
import { mostLevels } from './levels-between.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

/** What is wrong with the levels as such: too few, two controls, no value, alike, outside of what the factor can be. */
export function levelProblems(plan: Plan): PlanProblem[] {
  const { levels } = plan
  const found: PlanProblem[] = []
  if (levels.length < 2)
    found.push({ path: '/levels', severity: 'stop', reason: 'fewer-than-two-levels' })
  if (levels.length > mostLevels) {
    found.push({ path: '/levels', severity: 'stop', reason: 'too-many-levels', most: mostLevels })
  }
  const controls = levels.flatMap(({ control }, index) => (control ? [index] : []))
  if (levels.length >= 2 && controls.length === 0) {
    found.push({ path: '/levels', severity: 'ask', reason: 'no-control' })
  }
  if (controls.length > 1) {
    const labels = controls.map((index) => levels[index]?.label ?? '')
    const path = `/levels/${controls[1]}/control`
    found.push({ path, severity: 'stop', reason: 'two-controls', labels })
  }
  for (const [index, level] of levels.entries()) {
    found.push(...labelProblems(levels, level, index))
    found.push(
      ...(plan.factor.acts.on === 'choice'
        ? optionProblems(levels, level, index)
        : valueProblems(plan, level, index)),
    )
  }
  return found
}

function labelProblems(levels: readonly Level[], { label }: Level, index: number): PlanProblem[] {
  const path = `/levels/${index}/label`
  const plain = label.trim().toLowerCase()
  if (plain === '') return [{ path, severity: 'stop', reason: 'empty-label' }]
  const otherIndex = levels.findIndex((other) => other.label.trim().toLowerCase() === plain)
  return otherIndex < index
    ? [{ path, severity: 'stop', reason: 'duplicate-label', label, otherIndex }]
    : []
}

function valueProblems({ factor, levels }: Plan, { value }: Level, index: number): PlanProblem[] {
  const path = `/levels/${index}/value`
  if (value === null) return [{ path, severity: 'stop', reason: 'level-without-value' }]
  if (!Number.isFinite(value)) return [{ path, severity: 'stop', reason: 'not-a-number' }]
  const bounds = levelBounds(factor.acts.on)
  if (value < bounds.least || value > bounds.most) {
    const { least, most } = bounds
    return [{ path, severity: 'stop', reason: 'level-out-of-range', value, least, most }]
  }
  if (bounds.whole && !Number.isInteger(value)) {
    return [{ path, severity: 'stop', reason: 'level-not-whole', value }]
  }
  const otherIndex = levels.findIndex((other) => other.value === value)
  return otherIndex < index
    ? [{ path, severity: 'stop', reason: 'duplicate-value', value, otherIndex }]
    : []
}

function optionProblems(levels: readonly Level[], level: Level, index: number): PlanProblem[] {
  const path = `/levels/${index}/changes`
  const changes = level.changes ?? []
  if (changes.length === 0) {
    return level.control ? [] : [{ path, severity: 'ask', reason: 'option-without-change' }]
  }
  const same = JSON.stringify(changes)
  const otherIndex = levels.findIndex((other) => JSON.stringify(other.changes ?? []) === same)
  const other = levels[otherIndex]
  if (!other || otherIndex >= index) return []
  const alike = { label: level.label, otherIndex, otherLabel: other.label }
  return [{ path, severity: 'ask', reason: 'options-alike', ...alike }]
}
