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

/** A worker with the news of its failing: one that does not even start answers nothing, so its error is the answer. */
interface Started {
  worker: Worker
  /** Rejects once the worker has failed, and never resolves. */
  broken: Promise<never>
}

/** Workers that were started ahead and wait for whoever asks first. */
const ahead = new Map<WorkerName, Started>()
const mostMillisecondsAhead = 30_000

/**
 * Starts a worker while the program of the place that will ask it is still being fetched, so that both come side by side. The
 * next who opens one of this name has it; one that nobody wants is ended after half a minute, one that fails at once.
 */
export function startAhead(name: WorkerName): void {
  if (ahead.has(name)) return
  const spare = start(name)
  ahead.set(name, spare)
  const drop = () => {
    if (ahead.get(name) !== spare) return
    ahead.delete(name)
    spare.worker.terminate()
  }
  setTimeout(drop, mostMillisecondsAhead)
  spare.broken.catch(drop)
}

function start(name: WorkerName): Started {
  const worker = starts[name]()
  const broken = new Promise<never>((_, reject) => {
    worker.addEventListener('error', ({ message }) => {
      reject(new Error(message || `the program that works out the ${name} did not start`))
    })
    worker.addEventListener('messageerror', () => {
      reject(new Error(`an answer of the program that works out the ${name} could not be read`))
    })
  })
  // Whoever asks hears of it; where nobody does, there is nothing to say.
  broken.catch(() => undefined)
  return { worker, broken }
}

function started(name: WorkerName): Started {
  const waiting = ahead.get(name)
  ahead.delete(name)
  return waiting ?? start(name)
}

/** Opens a worker, the only way to one; ending it twice does no harm. What is asked of one that fails is rejected; to ask one that was ended is a mistake of the program, and throws. */
export function openWorker<Name extends WorkerName>(name: Name): OpenWorker<Name> {
  const { worker, broken } = started(name)
  const remote = Comlink.wrap<WorkerServices[Name]>(worker)
  let ended = false
  return {
    service: answeredOrBroken(remote, broken, () => ended),
    end: () => {
      ended = true
      worker.terminate()
    },
  }
}

/** The same service, each of whose calls is rejected once its worker has failed: Comlink alone would wait for good. */
function answeredOrBroken<Service extends object>(
  service: Service,
  broken: Promise<never>,
  ended: () => boolean,
): Service {
  return new Proxy(service, {
    get: (asked, name) => {
      if (ended()) throw new Error('asked of a worker that was ended')
      const call: unknown = Reflect.get(asked, name)
      if (typeof call !== 'function') return call
      return (...values: unknown[]) =>
        Promise.race([Reflect.apply(call, asked, values) as Promise<unknown>, broken])
    },
  })
}

/** A function the worker may call back, such as for progress. */
export function callBack<Callback extends (...values: never[]) => void>(callback: Callback) {
  return Comlink.proxy(callback)
}
