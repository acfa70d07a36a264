import * as Comlink from 'comlink'
import type { PlanService } from './plan-worker.ts'

/** A worker that follows a plan while it is typed. */
export interface PlanWorker {
  service: Comlink.Remote<PlanService>
  end: () => void
}

/** Starts such a worker; whoever starts it ends it. */
export function startPlanWorker(): PlanWorker {
  const worker = new Worker(new URL('./plan-worker.ts', import.meta.url), {
    type: 'module',
    name: 'plan',
  })
  const service = Comlink.wrap<PlanService>(worker)
  return {
    service,
    end: () => {
      service[Comlink.releaseProxy]()
      worker.terminate()
    },
  }
}
