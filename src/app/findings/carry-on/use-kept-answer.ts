import { useEffect } from 'react'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { useServices } from '@/app/services/services.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { failureReasonOf } from '@/core/record/failure-reason.ts'
import { answerText, type Headline } from '@/core/wording/findings/headline.ts'
import type { Notebook } from '@/notebook/notebook.ts'

/**
 * Writes the answer's sentence beside the trial in the home list, as of the revision it was found at: of a trial that has
 * moved on since the notebook takes none.
 */
export function useKeptAnswer(asOf: FindingsAnswer['asOf'], sentence: Headline | null): void {
  const { notebook } = useServices()
  const watch = useThrown()
  const trialId = asOf?.trialId
  const revision = asOf?.revision
  const text = sentence === null ? null : answerText(sentence)
  useEffect(() => {
    if (trialId === undefined || revision === undefined || text === null) return
    watch(keptWhereRoom(notebook, trialId, revision, text))
  }, [notebook, watch, trialId, revision, text])
}

/** Without room for it nothing is lost: the line is found again at the next look, and the answer is there to be read. */
export async function keptWhereRoom(
  notebook: Pick<Notebook, 'keepAnswer'>,
  ...answer: Parameters<Notebook['keepAnswer']>
): Promise<void> {
  try {
    await notebook.keepAnswer(...answer)
  } catch (cause) {
    if (failureReasonOf(cause) !== 'out-of-room') throw cause
  }
}
