import { useEffect, useState } from 'react'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

/** SHA-256 of a trial's file, in hex; undefined until it is reckoned, and where the browser offers none (an address without https). */
export function useTrialHash(whole: WholeTrial): string | undefined {
  const [known, setKnown] = useState<{ of: WholeTrial; hash: string }>()
  useEffect(() => {
    const { subtle } = globalThis.crypto
    if (!subtle) return
    let wanted = true
    void subtle.digest('SHA-256', new TextEncoder().encode(writeTrialFile(whole))).then((bytes) => {
      const hash = [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, '0'))
      if (wanted) setKnown({ of: whole, hash: hash.join('') })
    })
    return () => {
      wanted = false
    }
  }, [whole])
  return known?.of === whole ? known.hash : undefined
}
