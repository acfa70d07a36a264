import * as Comlink from 'comlink'
import { useEffect, useState } from 'react'
import type { Learned } from '@/core/learned/learned.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { LearningService } from './learning-worker.ts'

/**
 * What trials teach of the kitchen, worked out off the screen once they have been read; null until then. The worker ends
 * with its answer. A failure is thrown to the nearest error boundary.
 */
export function useLearned(trials: WholeTrial[] | undefined): Learned | null {
  const [learned, setLearned] = useState<Learned | null>(null)
  const [failure, setFailure] = useState<{ cause: unknown } | null>(null)
  useEffect(() => {
    if (!trials) return
    const worker = new Worker(new URL('./learning-worker.ts', import.meta.url), {
      type: 'module',
      name: 'learning',
    })
    const service = Comlink.wrap<LearningService>(worker)
    let here = true
    const end = () => {
      here = false
      service[Comlink.releaseProxy]()
      worker.terminate()
    }
    service
      .learn(trials)
      .then((answer) => here && setLearned(answer))
      .catch((cause: unknown) => here && setFailure({ cause }))
      .finally(() => here && end())
    return () => {
      if (here) end()
    }
  }, [trials])
  if (failure) throw failure.cause
  return learned
}
