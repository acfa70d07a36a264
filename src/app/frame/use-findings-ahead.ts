import { useEffect } from 'react'
import { idleMoment } from '@/app/kit/page/idle-moment.ts'
import { workOutAhead } from '@/app/worker/findings-ahead.ts'
import { mustSayLook } from '@/core/seal/must-say-look.ts'
import { sealed } from '@/core/seal/sealed.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { placeNamed } from './places.tsx'

/** A trial that nobody has changed for so long is not being worked on at this moment. */
const quietMilliseconds = 400

/**
 * Makes Findings ready while another place of the trial is read: once the page is quiet, its program, its charts and its
 * answer are there before the press; not at the Bench, whose presses come first. A change of the trial begins the waiting anew. Where the press came first, the
 * answer is worked out beside the program, unless that would be a look; where the program is here, the place asks by itself.
 */
export function useFindingsAhead(whole: WholeTrial, placeName: string): void {
  const scored = whole.ballots.length > 0
  useEffect(() => {
    if (!scored) return
    if (placeName === 'findings') {
      if (askedBeforeItsProgram(whole)) workOutAhead(whole)
      return
    }
    if (placeName === 'bench') return
    const asked = { stopped: false }
    const quiet = setTimeout(() => prepare(whole, asked), quietMilliseconds)
    return () => {
      asked.stopped = true
      clearTimeout(quiet)
    }
  }, [whole, scored, placeName])
}

const askedBeforeItsProgram = (whole: WholeTrial) =>
  placeNamed('findings').here() === null && !sealed(whole) && !mustSayLook(whole)

/**
 * In parts, each in an idle moment of its own, since a program that starts holds the page: what the place reckons with, the place,
 * its answer. One that cannot be fetched now is fetched again at the press, which says so where it fails.
 */
async function prepare(whole: WholeTrial, asked: { stopped: boolean }): Promise<void> {
  await idleMoment()
  await import('@/app/findings/findings-source.ts').catch(() => null)
  await idleMoment()
  await placeNamed('findings')
    .fetch()
    .catch(() => null)
  await idleMoment()
  const prepared = await import('@/app/findings/prepare-findings.ts').catch(() => null)
  if (!asked.stopped) prepared?.prepareFindings(whole)
}
