import * as Comlink from 'comlink'
import * as z from 'zod/mini'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { BackedUp } from '@/notebook/back-up.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import type { LongWork } from '@/notebook/long-work.ts'
import type { OpenNotebook, RestoreOutcome, WouldRestoreOutcome } from '@/notebook/notebook.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'
import { randomId, randomSeed } from './random-id.ts'
import { restoreLock } from './restore-lock.ts'

// Shapes are checked without compiling code at run time, which the page's policy forbids.
z.config({ jitless: true })

/** What a worker's call came to: its answer, or the notebook's reason, which would lose its name on the way out. */
export type WorkerReply<Answer> = { answer: Answer } | { failed: FailureReason; detail: string }

let stopping = false

/** Does work on a connection of the worker's own to the notebook, and lets go of it. */
async function work<Answer>(
  name: string,
  zone: string,
  onProgress: (done: number, total: number) => void,
  task: (notebook: OpenNotebook, work: LongWork) => Promise<Answer>,
): Promise<WorkerReply<Answer>> {
  const chance = { now: () => Date.now(), newId: randomId, newSeed: randomSeed }
  const notebook = createNotebook(name, { ...chance, zone })
  stopping = false
  try {
    return { answer: await task(notebook, { onProgress, stopped: () => stopping }) }
  } catch (failure) {
    if (!(failure instanceof NotebookFailure)) throw failure
    return { failed: failure.reason, detail: failure.message }
  } finally {
    notebook.close()
  }
}

const service = {
  backUp: (name: string, zone: string, onProgress: (done: number, total: number) => void) =>
    work<BackedUp | undefined>(name, zone, onProgress, (notebook, how) => notebook.backUp(how)),
  restore: (
    name: string,
    zone: string,
    zip: File,
    onProgress: (done: number, total: number) => void,
  ) =>
    restoreLock.hold(() =>
      work<RestoreOutcome>(name, zone, onProgress, (notebook, how) =>
        notebook.restore(zip, { ...how, name: zip.name }),
      ),
    ),
  wouldRestore: (
    name: string,
    zone: string,
    zip: File,
    onProgress: (done: number, total: number) => void,
  ) =>
    work<WouldRestoreOutcome | undefined>(name, zone, onProgress, (notebook, how) =>
      notebook.wouldRestore(zip, { ...how, name: zip.name }),
    ),
  /** Asks the work under way to end with what is whole by then. */
  stop(): void {
    stopping = true
  },
}

export type BackupService = typeof service

Comlink.expose(service)
