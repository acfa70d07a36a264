import * as Comlink from 'comlink'
import type { ClockService } from './clock-worker.ts'
import type { FindingsService } from './findings-worker.ts'
import type { LearningService } from './learning-worker.ts'
import type { PlanService } from './plan-worker.ts'
import type { ReportService } from './report-worker.ts'

/** What can be asked off the screen, by the worker that answers it. */
export interface WorkerServices {
  clock: ClockService
  findings: FindingsService
  learning: LearningService
  plan: PlanService
  report: ReportService
}

export type WorkerName = keyof WorkerServices

/** A worker of one's own: whoever opens it ends it, and ending stops whatever it is doing at once. */
export interface OpenWorker<Name extends WorkerName> {
  service: Comlink.Remote<WorkerServices[Name]>
  end: () => void
}

const starts: Record<WorkerName, () => Worker> = {
  clock: () =>
    new Worker(new URL('./clock-worker.ts', import.meta.url), { type: 'module', name: 'clock' }),
  findings: () =>
    new Worker(new URL('./findings-worker.ts', import.meta.url), {
      type: 'module',
      name: 'findings',
    }),
  learning: () =>
    new Worker(new URL('./learning-worker.ts', import.meta.url), {
      type: 'module',
      name: 'learning',
    }),
  plan: () =>
    new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module', name: 'plan' }),
  report: () =>
    new Worker(new URL('./report-worker.ts', import.meta.url), { type: 'module', name: 'report' }),
}

/** Workers that were started ahead and wait for whoever asks first. */
const ahead = new Map<WorkerName, Worker>()
const mostMillisecondsAhead = 30_000

/**
 * Starts a worker while the program of the place that will ask it is still being fetched, so that both come side by side. The
 * next who opens one of this name has it; one that nobody wants is ended after half a minute.
 */
export function startAhead(name: WorkerName): void {
  if (ahead.has(name)) return
  const worker = starts[name]()
  ahead.set(name, worker)
  setTimeout(() => {
    if (ahead.get(name) !== worker) return
    ahead.delete(name)
    worker.terminate()
  }, mostMillisecondsAhead)
}

function started(name: WorkerName): Worker {
  const waiting = ahead.get(name)
  ahead.delete(name)
  return waiting ?? starts[name]()
}

/** Opens a worker, the only way to one; ending it twice does no harm. */
export function openWorker<Name extends WorkerName>(name: Name): OpenWorker<Name> {
  const worker = started(name)
  const service = Comlink.wrap<WorkerServices[Name]>(worker)
  let ended = false
  return {
    service,
    end: () => {
      if (ended) return
      ended = true
      service[Comlink.releaseProxy]()
      worker.terminate()
    },
  }
}

/** A function the worker may call back, such as for progress. */
export function callBack<Callback extends (...values: never[]) => void>(callback: Callback) {
  return Comlink.proxy(callback)
}
