import type { Step } from '@/core/trial/step.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'

/** What one repeat of a step asks for: "about 10 min of work, then 30 min of waiting"; empty for one that takes no time. */
export function workText({
  kind,
  handsSeconds,
  waitSeconds,
}: Pick<Step, 'kind' | 'handsSeconds' | 'waitSeconds'>): string {
  const work = handsSeconds > 0 ? `about ${durationText(handsSeconds)} of work` : ''
  const time = durationText(waitSeconds)
  const wait = kind === 'bake' ? `${time} in the oven` : `${work ? 'then ' : ''}${time} of waiting`
  return [work, waitSeconds > 0 ? wait : ''].filter(Boolean).join(', ')
}
