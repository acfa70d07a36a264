import * as Comlink from 'comlink'
import type { FindingsService } from './findings-worker.ts'

/** A worker of one's own for long computations; `end` stops whatever it is doing at once. */
export interface FindingsWorker {
  service: Comlink.Remote<FindingsService>
  end: () => void
}

/** Starts such a worker; ending it twice does no harm. */
export function startFindingsWorker(): FindingsWorker {
  const worker = new Worker(new URL('./findings-worker.ts', import.meta.url), {
    type: 'module',
    name: 'findings',
  })
  const service = Comlink.wrap<FindingsService>(worker)
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
