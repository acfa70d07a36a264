import { useEffect, useState } from 'react'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { useServices } from '@/app/services/services.ts'
import { openWorker } from '@/app/worker/open-worker.ts'
import { mustSayLook } from '@/core/seal/must-say-look.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { answerText, headline } from '@/core/wording/findings/headline.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import type { Summary } from '@/notebook/summary-record.ts'

/**
 * Finds the answers of these lines that have none yet, one after the other off the screen, and writes each beside its trial.
 * A look that would have to be recorded is not taken here: such a trial says its answer once somebody has looked.
 */
export function BookAnswers({ lines }: { lines: readonly Summary[] }) {
  const { notebook } = useServices()
  const watch = useThrown()
  const [tried, setTried] = useState<readonly string[]>([])
  const open = lines.find(
    (line) =>
      line.answer === undefined &&
      !line.sealed &&
      line.sessionsDone > 0 &&
      !tried.includes(stateOf(line)),
  )
  const [trialId, revision] = [open?.trialId, open?.revision]
  useEffect(() => {
    if (trialId === undefined || revision === undefined) return
    const asked = { stopped: false }
    const find = async () => {
      const found = await foundAnswer(notebook, trialId)
      if (found !== null) await notebook.keepAnswer(trialId, revision, found)
      if (!asked.stopped) setTried((before) => [...before, stateOf({ trialId, revision })])
    }
    watch(find())
    return () => {
      asked.stopped = true
    }
  }, [notebook, trialId, revision, watch])
  return null
}

const stateOf = ({ trialId, revision }: Pick<Summary, 'trialId' | 'revision'>) =>
  `${trialId} ${revision}`

/** The answer of a trial in one sentence; null while there is none, or while seeing it would be a look to be recorded. */
async function foundAnswer(notebook: Pick<OpenNotebook, 'wholeTrial'>, trialId: string) {
  const whole = await notebook.wholeTrial(trialId)
  if (!whole || mustSayLook(whole)) return null
  const worker = openWorker('findings')
  try {
    const answer = await worker.service.findings({ of: { whole }, weights: null })
    const main = answer?.findings.responses[0]
    if (!answer || !main) return null
    return answerText(headline(main, namingOf(answer.findings, answer.scores.responses[0])))
  } finally {
    worker.end()
  }
}
