import { useCallback, useState } from 'react'
import { useLocation } from 'wouter'
import { isTable, layDownTable } from '@/app/services/scores-draft.ts'
import { useServices } from '@/app/services/services.ts'
import type { FileTrouble } from '@/trial-file/trouble.ts'

interface Twin {
  name: string
  text: string
}

/** Reading trial files into the notebook, and what came of the last one. A table of scores is led to where scores are imported. */
export function useReadIn() {
  const { notebook } = useServices()
  const [, go] = useLocation()
  const [refused, setRefused] = useState<{ name: string; troubles: FileTrouble[] } | null>(null)
  const [twin, setTwin] = useState<Twin | null>(null)

  const readIn = useCallback(
    async (files: readonly File[]) => {
      setRefused(null)
      let opened: string | undefined
      for (const file of files) {
        if (isTable(file)) {
          await layDownTable(notebook, file)
          go('/scores')
          return
        }
        const text = await file.text()
        const outcome = await notebook.importTrial(text)
        if (outcome.ok) opened = outcome.trialId
        else if (outcome.reason === 'trouble') {
          setRefused({ name: file.name, troubles: outcome.troubles })
          return
        } else {
          setTwin({ name: file.name, text })
          return
        }
      }
      if (opened && files.length === 1) go(`/trial/${opened}/plan`)
    },
    [notebook, go],
  )

  const keepBoth = async (): Promise<string | undefined> => {
    if (!twin) return undefined
    setTwin(null)
    const outcome = await notebook.importTrial(twin.text, { keepBoth: true })
    if (outcome.ok) return outcome.trialId
    if (outcome.reason === 'trouble') setRefused({ name: twin.name, troubles: outcome.troubles })
    return undefined
  }

  return { readIn, refused, twin, forgetTwin: () => setTwin(null), keepBoth }
}

export type ReadIn = ReturnType<typeof useReadIn>
