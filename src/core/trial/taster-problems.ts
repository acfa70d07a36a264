import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

/** What is wrong with the tasters and what they are asked: none, one alone, one twice, a tell-apart pair that is none. */
export function tasterProblems({ tasters, responses, levels, tellApart }: Plan): PlanProblem[] {
  const found: PlanProblem[] = []
  const asked = tellApart !== null || responses.some(({ by }) => by === 'taster')
  if (asked && tasters.length === 0)
    found.push({ path: '/tasters', severity: 'stop', reason: 'no-tasters' })
  if (asked && tasters.length === 1)
    found.push({ path: '/tasters', severity: 'ask', reason: 'one-taster' })
  for (const [index, { tasterId }] of tasters.entries()) {
    if (tasters.findIndex((other) => other.tasterId === tasterId) === index) continue
    const path = `/tasters/${index}/tasterId`
    found.push({ path, severity: 'stop', reason: 'taster-twice', tasterId })
  }
  if (!tellApart) return found
  for (const [index, id] of tellApart.levelIds.entries()) {
    if (levels.some((level) => level.id === id)) continue
    const path = `/tellApart/levelIds/${index}`
    found.push({ path, severity: 'stop', reason: 'tell-apart-level-missing', id })
  }
  if (tellApart.levelIds[0] === tellApart.levelIds[1]) {
    found.push({ path: '/tellApart/levelIds/1', severity: 'stop', reason: 'tell-apart-same-level' })
  }
  if (tellApart.test === 'paired' && tellApart.attribute === undefined)
    found.push({ path: '/tellApart/attribute', severity: 'stop', reason: 'pair-of-nothing' })
  return found
}
