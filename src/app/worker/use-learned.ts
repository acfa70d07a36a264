import type { Learned } from '@/core/learned/learned.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { OpenWorker } from './open-worker.ts'
import { type Asked, useAnswer } from './use-answer.ts'

/** What these trials teach of the kitchen, learned off the screen; null asks nothing. */
export function useLearned(trials: readonly WholeTrial[] | null): Asked<Learned> {
  return useAnswer('learning', trials, learnFrom)
}

async function learnFrom(
  service: OpenWorker<'learning'>['service'],
  trials: readonly WholeTrial[],
): Promise<Learned> {
  await service.forget()
  for (const whole of trials) await service.take(whole)
  return await service.learn()
}
