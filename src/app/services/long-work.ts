import * as Comlink from 'comlink'
import { createStore } from 'zustand'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { BackedUp } from '@/notebook/back-up.ts'
import type { RestoreOutcome, WouldRestoreOutcome } from '@/notebook/notebook.ts'
import type { WouldRestore } from '@/notebook/restore-record.ts'
import type { BackupService, WorkerReply } from './backup-worker.ts'

export type LongWorkKind = 'backup' | 'restore' | 'look'

/** How the last long work of this window ended. */
export type LongWorkEnd =
  | { kind: 'backup'; is: 'saved'; trials: number; sealed: number; damaged: number }
  | { kind: 'restore'; is: 'read'; outcome: RestoreOutcome; file: string }
  | { kind: 'look'; is: 'would'; would: WouldRestore; zip: File }
  | { kind: LongWorkKind; is: 'stopped' }
  | { kind: LongWorkKind; is: 'failed'; reason: FailureReason | null; detail: string }

interface LongWorkState {
  running: { kind: LongWorkKind; done: number; total: number; stop: () => void } | null
  end: LongWorkEnd | null
}

/** The backup or restore of this window: it goes on whatever place is open, and one runs at a time. */
export const longWork = createStore<LongWorkState>(() => ({ running: null, end: null }))

export const forgetLongWork = () => longWork.setState({ end: null })

function openBackupWorker() {
  const worker = new Worker(new URL('./backup-worker.ts', import.meta.url), {
    type: 'module',
    name: 'backup',
  })
  // A worker that does not even start answers nothing: its error is the answer.
  const broken = new Promise<never>((_, reject) => {
    worker.onerror = (event) => reject(new Error(event.message || 'the worker did not start'))
  })
  return { worker, broken, service: Comlink.wrap<BackupService>(worker) }
}

/** A backup that nobody waits for; it gives way to another long work, and one that lacks a damaged trial is none. */
export async function quietBackup(
  name: string,
  zone: string,
): Promise<Pick<BackedUp, 'zip' | 'sealed' | 'held'> | 'busy' | 'not-whole'> {
  if (longWork.getState().running) return 'busy'
  const { worker, broken, service } = openBackupWorker()
  try {
    const asked = service.backUp(
      name,
      zone,
      Comlink.proxy(() => undefined),
    )
    const answered = await Promise.race([asked, broken])
    if ('failed' in answered || !answered.answer || answered.answer.damaged.length > 0)
      return 'not-whole'
    const { zip, sealed, held } = answered.answer
    return { zip, sealed, held }
  } finally {
    service[Comlink.releaseProxy]()
    worker.terminate()
  }
}

async function run<Answer>(
  kind: LongWorkKind,
  ask: (
    service: Comlink.Remote<BackupService>,
    onProgress: (done: number, total: number) => void,
  ) => Promise<WorkerReply<Answer>>,
  told: (answer: Answer) => LongWorkEnd,
): Promise<void> {
  if (longWork.getState().running) return
  const { worker, broken, service } = openBackupWorker()
  const stop = () => void service.stop()
  longWork.setState({ running: { kind, done: 0, total: 0, stop }, end: null })
  const onProgress = Comlink.proxy((done: number, total: number) =>
    longWork.setState({ running: { kind, done, total, stop } }),
  )
  try {
    const answered = await Promise.race([ask(service, onProgress), broken])
    longWork.setState({
      end:
        'failed' in answered
          ? { kind, is: 'failed', reason: answered.failed, detail: answered.detail }
          : told(answered.answer),
    })
  } catch (cause) {
    const detail = cause instanceof Error ? cause.message : String(cause)
    longWork.setState({ end: { kind, is: 'failed', reason: null, detail } })
  } finally {
    longWork.setState({ running: null })
    service[Comlink.releaseProxy]()
    worker.terminate()
  }
}

/** Backs up the notebook of this name and hands the zip to `save`, with what it holds. */
export function startBackup(
  name: string,
  zone: string,
  save: (made: BackedUp) => void,
): Promise<void> {
  return run<BackedUp | undefined>(
    'backup',
    (service, onProgress) => service.backUp(name, zone, onProgress),
    (made) => {
      if (!made) return { kind: 'backup', is: 'stopped' }
      save(made)
      const { trials, sealed, damaged } = made
      return { kind: 'backup', is: 'saved', trials, sealed, damaged: damaged.length }
    },
  )
}

/** Looks into a backup: what restoring it would do is the end of this work, and what is pressed then restores it. */
export function startLook(name: string, zone: string, zip: File): Promise<void> {
  return run<WouldRestoreOutcome | undefined>(
    'look',
    (service, onProgress) => service.wouldRestore(name, zone, zip, onProgress),
    (outcome) => {
      if (!outcome) return { kind: 'look', is: 'stopped' }
      if (!outcome.ok) return { kind: 'restore', is: 'read', outcome, file: zip.name }
      return { kind: 'look', is: 'would', would: outcome.would, zip }
    },
  )
}

/** Restores a backup into the notebook of this name. */
export function startRestore(name: string, zone: string, zip: File): Promise<void> {
  return run<RestoreOutcome>(
    'restore',
    (service, onProgress) => service.restore(name, zone, zip, onProgress),
    (outcome) => ({ kind: 'restore', is: 'read', outcome, file: zip.name }),
  )
}
