import { createStore } from 'zustand'
import { failureReasonOf } from '@/core/record/failure-reason.ts'
import { clockJump, type TwoClocks } from '@/core/session/clock-moved.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'

/** A move of the device's clock under an open page (UTC ms), until somebody has read of it; undefined until that is known. */
export const clockMove = createStore<{ move: { from: number; to: number } | null | undefined }>(
  () => ({ move: undefined }),
)

const key = 'clock-moved'
const everyMilliseconds = 5000

type Keeping = Pick<OpenNotebook, 'draft' | 'keepDraft' | 'dropDraft'>

let watching = false

/**
 * Watches, from the first call on and for as long as the page is open, whether the clock of the day runs away from the steady
 * one. What was seen is kept, so that a reload does not hide it. While the page is out of sight nothing can be told: the device
 * sleeps then as a rule, and a steady clock stands. It may sleep under a page in sight too: what is said of a clock that went
 * on leaves that open.
 */
export function watchClock(notebook: Keeping, now: () => number): void {
  if (watching) return
  watching = true
  const clocks = (): TwoClocks => ({
    ...{ dayMilliseconds: now(), steadyMilliseconds: performance.now() },
  })
  let before = clocks()
  const look = () => {
    const after = clocks()
    const jump = document.visibilityState === 'visible' ? clockJump(before, after) : null
    before = after
    if (jump === null) return
    const to = after.dayMilliseconds
    clockMove.setState({ move: { from: to - jump, to } })
    // Said on the page in any case; kept for the next one where there is room.
    void notebook
      .keepDraft(key, { from: String(to - jump), to: String(to) })
      .catch((cause: unknown) => {
        if (failureReasonOf(cause) === null) throw cause
      })
  }
  setInterval(look, everyMilliseconds)
  document.addEventListener('visibilitychange', () => {
    before = clocks()
  })
  void readKept(notebook)
}

async function readKept(notebook: Keeping): Promise<void> {
  const kept = await notebook.draft(key)
  if (clockMove.getState().move !== undefined) return
  clockMove.setState({ move: kept ? { from: Number(kept.from), to: Number(kept.to) } : null })
}

/** Somebody has read of it. */
export async function forgetClockMove(notebook: Keeping): Promise<void> {
  clockMove.setState({ move: null })
  await notebook.dropDraft(key)
}
