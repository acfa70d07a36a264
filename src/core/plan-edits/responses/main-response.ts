import type { Plan } from '@/core/trial/plan-record.ts'
import { type ResponsePreset, responsePresets } from './response-presets.ts'

/** The usual responses that the plan does not have yet. */
export function presetsLeft({ responses }: Pick<Plan, 'responses'>): ResponsePreset[] {
  return responsePresets.filter(({ name }) => responses.every((each) => each.name !== name))
}

/** The plan with a response more, and its main one where it is asked for as such. */
export function withPreset(plan: Plan, preset: ResponsePreset, id: string, main = false): Plan {
  const responses = [...plan.responses, { ...preset, id }]
  return { ...plan, responses, ...(main ? { mainResponseId: id } : {}) }
}
