interface TraceEvent {
  name: string
  cat: string
  pid: number
  tid: number
  /** Microseconds of the clock, and of the thread's own time at work. */
  ts: number
  tts?: number
  dur?: number
  tdur?: number
  args: { data?: { type?: string } }
}

export interface KeyFrame {
  /** What the page's thread worked, whatever else the machine did meanwhile: script, style, layout and paint. */
  workedMilliseconds: number
  /** By the clock. */
  passedMilliseconds: number
}

export const traceCategories = ['devtools.timeline', 'blink.user_timing', 'toplevel']

/**
 * From the key's event to the end of the task that paints the frame with what is asked: the key itself, which the page marked
 * with `key` when its input was heard, or the weights that follow from it, marked with `weights` when they were changed. What
 * comes after (raster, the screen) is no longer the page's.
 */
export function keyFrames(trace: string, shows: 'key' | 'weights'): KeyFrame[] {
  const { traceEvents }: { traceEvents: TraceEvent[] } = JSON.parse(trace)
  const marksOf = (what: string) =>
    traceEvents.filter(({ name, cat }) => name === what && cat.includes('user_timing'))
  const marks = marksOf('key')
  const shown = marksOf(shows)
  const page = traceEvents
    .filter(({ pid, tid }) => pid === marks[0]?.pid && tid === marks[0]?.tid)
    .toSorted((a, b) => a.ts - b.ts)
  const downs = page.filter(
    (one) => one.name === 'EventDispatch' && one.args.data?.type === 'keydown',
  )
  const paints = page.filter(({ name }) => name === 'PrePaint')
  const frames = page.filter(
    (task) =>
      task.name === 'ThreadControllerImpl::RunTask' &&
      paints.some(({ ts }) => ts >= task.ts && ts < endOf(task)),
  )
  return marks.flatMap((mark, at) => {
    const down = downs.findLast(({ ts }) => ts < mark.ts)
    const until = marks[at + 1]?.ts ?? Number.POSITIVE_INFINITY
    const change = shown.find(({ ts }) => ts >= mark.ts && ts < until)
    const frame = change && frames.find((task) => endOf(task) > change.ts)
    if (!down || !frame) return []
    const worked = (frame.tts ?? 0) + (frame.tdur ?? 0) - (down.tts ?? 0)
    const passed = endOf(frame) - down.ts
    return [{ workedMilliseconds: worked / 1000, passedMilliseconds: passed / 1000 }]
  })
}

const endOf = ({ ts, dur = 0 }: TraceEvent) => ts + dur
