import { useEffect } from 'react'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { useServices } from '@/app/services/services.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { answerText, type Headline } from '@/core/wording/findings/headline.ts'

/** Writes the answer's sentence beside the trial in the home list, as of the revision it was found at. */
export function useKeptAnswer(whole: WholeTrial | null, sentence: Headline | null): void {
  const { notebook } = useServices()
  const watch = useThrown()
  const trialId = whole?.trial.id
  const revision = whole?.trial.revision
  const text = sentence === null ? null : answerText(sentence)
  useEffect(() => {
    if (trialId === undefined || revision === undefined || text === null) return
    watch(notebook.keepAnswer(trialId, revision, text))
  }, [notebook, watch, trialId, revision, text])
}
