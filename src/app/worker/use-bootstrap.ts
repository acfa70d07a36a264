import { useCallback, useEffect, useRef, useState } from 'react'
import { usualResamples } from '@/core/findings/best/usual-resamples.ts'
import type { Absent } from '@/core/findings/reason.ts'
import type { Bootstrap } from '@/core/findings/response-findings-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { callBack, type OpenWorker, openWorker } from './open-worker.ts'

export type BootstrapState =
  | { state: 'idle' }
  | { state: 'running'; done: number }
  | { state: 'answered'; answer: Bootstrap | Absent }
  | { state: 'failed'; error: Error }

/** Draws the tasters or sessions again in a worker, with progress, and can be stopped at any moment. */
export function useBootstrap(scores: ScoreTable, responseIndex: number, seed: number) {
  const [state, setState] = useState<BootstrapState>({ state: 'idle' })
  const running = useRef<OpenWorker<'findings'> | null>(null)
  const stop = useCallback(() => {
    running.current?.end()
    running.current = null
    setState({ state: 'idle' })
  }, [])
  useEffect(() => () => running.current?.end(), [])
  const start = async () => {
    const worker = openWorker('findings')
    running.current = worker
    setState({ state: 'running', done: 0 })
    const onProgress = callBack((done: number) => {
      if (running.current === worker) setState({ state: 'running', done })
    })
    try {
      const answer = await worker.service.bootstrap(
        scores,
        responseIndex,
        { seed, resamples: usualResamples },
        onProgress,
      )
      if (running.current === worker) setState({ state: 'answered', answer })
    } catch (cause) {
      if (running.current === worker)
        setState({
          state: 'failed',
          error: cause instanceof Error ? cause : new Error(String(cause)),
        })
    } finally {
      if (running.current === worker) running.current = null
      worker.end()
    }
  }
  return { state, start, stop }
}
