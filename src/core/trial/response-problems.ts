import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'
import type { Response } from './response.ts'

/** What is wrong with the responses: none, no main one, a margin without sense, names twice, a scale without its ends. */
export function responseProblems({ responses, mainResponseId }: Plan): PlanProblem[] {
  if (responses.length === 0)
    return [{ path: '/responses', severity: 'stop', reason: 'no-responses' }]
  const main = responses.findIndex(({ id }) => id === mainResponseId)
  const path = '/mainResponseId'
  const found: PlanProblem[] = []
  if (mainResponseId === null) found.push({ path, severity: 'stop', reason: 'no-main-response' })
  else if (main < 0) found.push({ path, severity: 'stop', reason: 'main-response-missing' })
  for (const [index, response] of responses.entries()) {
    found.push(
      ...nameProblems(responses, response, index),
      ...marginProblems(response, index, main),
    )
    found.push(...anchorProblems(response, index))
  }
  return found
}

function nameProblems(
  responses: readonly Response[],
  { name }: Response,
  index: number,
): PlanProblem[] {
  const path = `/responses/${index}/name`
  const plain = name.trim().toLowerCase()
  if (plain === '') return [{ path, severity: 'stop', reason: 'nameless-response' }]
  const otherIndex = responses.findIndex((other) => other.name.trim().toLowerCase() === plain)
  return otherIndex < index
    ? [{ path, severity: 'stop', reason: 'duplicate-response', name, otherIndex }]
    : []
}

function marginProblems({ margin, scale }: Response, index: number, main: number): PlanProblem[] {
  const path = `/responses/${index}/margin`
  if (margin === null) return index === main ? [{ path, severity: 'ask', reason: 'no-margin' }] : []
  if (!Number.isFinite(margin)) return [{ path, severity: 'stop', reason: 'not-a-number' }]
  if (margin <= 0) return [{ path, severity: 'stop', reason: 'margin-not-above-zero', margin }]
  const widest =
    scale.kind === 'nine-point'
      ? 8
      : scale.kind === 'just-about-right'
        ? 4
        : Number.POSITIVE_INFINITY
  return margin >= widest
    ? [{ path, severity: 'stop', reason: 'margin-past-scale', margin, widest }]
    : []
}

function anchorProblems({ scale }: Response, index: number): PlanProblem[] {
  if (scale.kind !== 'nine-point') return []
  const path = `/responses/${index}/scale/anchors`
  const named = (at: number) => scale.anchors.some((one) => one.at === at && one.text.trim() !== '')
  const missing = [1, 9].find((at) => !named(at))
  return missing === undefined
    ? []
    : [{ path, severity: 'ask', reason: 'anchor-missing', at: missing }]
}
