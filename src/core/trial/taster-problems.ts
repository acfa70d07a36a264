import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'
import { questionNamesLevel } from './question-names-level.ts'

/** What is wrong with the tasters and what they are asked: none, one alone, one twice, a tell-apart pair that is none. */
export function tasterProblems(plan: Plan): PlanProblem[] {
  const { tasters, responses, levels, tellApart, atTable } = plan
  const found: PlanProblem[] = wordsThatTell(plan)
  const asked =
    tellApart !== null ||
    atTable?.ranking !== undefined ||
    responses.some(({ by }) => by === 'taster')
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

/** Words of the baker's own that every taster reads and that may give a level away. */
function wordsThatTell({ tellApart, atTable, levels, responses }: Plan): PlanProblem[] {
  const references = responses.flatMap(({ by, scale }, index) =>
    by === 'taster' && scale.kind === 'nine-point'
      ? (scale.references ?? []).map(({ text }, at) => ({
          ...{ path: `/responses/${index}/scale/references/${at}/text`, asks: text },
        }))
      : [],
  )
  const words = [
    { path: '/tellApart/asks', asks: tellApart?.asks },
    { path: '/atTable/ranking/asks', asks: atTable?.ranking?.asks },
    ...references,
  ]
  return words.flatMap(({ path, asks }): PlanProblem[] =>
    asks !== undefined && questionNamesLevel(asks, levels)
      ? [{ path, severity: 'ask', reason: 'words-name-level' }]
      : [],
  )
}
