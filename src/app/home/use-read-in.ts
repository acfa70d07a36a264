import { useCallback, useState } from 'react'
import { useLocation } from 'wouter'
import { isTable, layDownTable } from '@/app/services/scores-draft.ts'
import { useServices } from '@/app/services/services.ts'
import { type FailureReason, failureReasonOf } from '@/core/record/failure-reason.ts'
import type { PartCounts, TrialComparison } from '@/core/whole-trial/compare-trials.ts'
import type { MergeConflict } from '@/core/whole-trial/merge-conflict.ts'
import type { FileTrouble } from '@/trial-file/trouble.ts'

/** What came of reading one file. */
export type FileAnswer =
  | { is: 'in'; trialId: string; already: boolean }
  | { is: 'taken'; trialId: string; taken: PartCounts; conflicts: MergeConflict[] }
  | {
      is: 'twin'
      trialId: string
      compared: TrialComparison | null
      uncovers: boolean
      binned: boolean
      text: string
    }
  | { is: 'refused'; troubles: FileTrouble[] }
  | { is: 'failed'; reason: FailureReason | null; detail: string; again: () => Promise<void> }
  | { is: 'table' }
  /** Packed, as a backup is. */
  | { is: 'zip' }
  | { is: 'left' }

export interface ReadFile {
  key: number
  name: string
  answer: FileAnswer
}

let keys = 0

/** By the first signs of it, whatever it is called. */
async function isZip(file: File): Promise<boolean> {
  return (await file.slice(0, 4).text()) === 'PK\u0003\u0004'
}

/** Reading trial files into the notebook; each file gets its own answer. A table of scores is led to where scores are imported. */
export function useReadIn() {
  const { notebook } = useServices()
  const [, go] = useLocation()
  const [answers, setAnswers] = useState<ReadFile[]>([])

  const answer = useCallback((key: number, next: FileAnswer) => {
    setAnswers((before) =>
      before.map((each) => (each.key === key ? { ...each, answer: next } : each)),
    )
  }, [])

  /** Does one thing with a file; a failure is the file's answer and can be tried again. */
  const attempt = useCallback(
    async (key: number, work: () => Promise<FileAnswer>): Promise<FileAnswer> => {
      const tried = await work().catch(
        (cause: unknown): FileAnswer => ({
          ...{ is: 'failed', reason: failureReasonOf(cause) },
          detail: cause instanceof Error ? cause.message : String(cause),
          again: async () => {
            await attempt(key, work)
          },
        }),
      )
      answer(key, tried)
      return tried
    },
    [answer],
  )

  const readOne = useCallback(
    async (file: File): Promise<FileAnswer> => {
      if (await isZip(file)) return { is: 'zip' }
      const text = await file.text()
      const outcome = await notebook.importTrial(text)
      if (outcome.ok) return { is: 'in', trialId: outcome.trialId, already: outcome.already }
      if (outcome.reason === 'trouble') return { is: 'refused', troubles: outcome.troubles }
      const { trialId, compared = null, uncovers = false, binned = false } = outcome
      return { is: 'twin', trialId, compared, uncovers, binned, text }
    },
    [notebook],
  )

  const readIn = useCallback(
    async (files: readonly File[]) => {
      const [only] = files
      if (only && files.length === 1 && isTable(only)) {
        await layDownTable(notebook, only)
        go('/scores')
        return
      }
      const listed = files.map((file) => ({ key: ++keys, file }))
      setAnswers([])
      for (const { key, file } of listed) {
        setAnswers((before) => [...before, { key, name: file.name, answer: { is: 'left' } }])
        const came = await attempt(key, async () =>
          isTable(file) ? { is: 'table' } : await readOne(file),
        )
        if (came.is === 'in' && files.length === 1) go(`/trial/${came.trialId}/plan`)
      }
    },
    [notebook, go, attempt, readOne],
  )

  const keepBoth = (key: number, text: string) =>
    attempt(key, async () => {
      const outcome = await notebook.importTrial(text, { keepBoth: true })
      if (outcome.ok) return { is: 'in', trialId: outcome.trialId, already: false }
      if (outcome.reason === 'trouble') return { is: 'refused', troubles: outcome.troubles }
      throw new Error('a copy under new ids met its own')
    })

  const takeInNew = (key: number, text: string) =>
    attempt(key, async () => {
      const outcome = await notebook.takeInNew(text)
      if (!outcome.ok) return { is: 'refused', troubles: outcome.troubles }
      const { trialId, taken, conflicts } = outcome
      return { is: 'taken', trialId, taken, conflicts }
    })

  const takeBack = (key: number, trialId: string) =>
    attempt(key, async () => {
      await notebook.bin(trialId, false)
      return { is: 'in', trialId, already: true }
    })

  const forget = (key: number) => setAnswers((before) => before.filter((each) => each.key !== key))

  return { readIn, answers, keepBoth, takeInNew, takeBack, forget }
}

export type ReadIn = ReturnType<typeof useReadIn>
