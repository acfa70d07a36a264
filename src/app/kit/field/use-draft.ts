import { useCallback, useEffect, useRef, useState } from 'react'
import { useThrown } from '@/app/kit/page/use-thrown.ts'

export interface DraftKeeping {
  load: () => Promise<Record<string, string> | undefined>
  save: (values: Record<string, string>) => Promise<void>
  drop: () => Promise<void>
}

export interface Draft {
  values: Record<string, string>
  set: (field: string, text: string) => void
  /** Puts a whole form in place of what was there. */
  setAll: (values: Record<string, string>) => void
  /** Fills in what nothing was said of yet; what was pressed or typed meanwhile stays. */
  fillIn: (values: Record<string, string>) => void
  /** Forgets one field's text, or all of it. */
  clear: (field?: string) => void
  /** True once what was kept has been read. */
  ready: boolean
}

const settleMilliseconds = 150

/**
 * Unfinished input that survives a reload: read once at the start, written a moment after the last key and at once when
 * the page is hidden or left. A write that fails is thrown to the nearest error boundary. `keeping` is read at the first
 * render only: give a form another React key to show another draft.
 */
export function useDraft(keeping: DraftKeeping): Draft {
  const [kept] = useState(keeping)
  const [values, setValues] = useState<Record<string, string>>({})
  const [ready, setReady] = useState(false)
  const latest = useRef<Record<string, string>>({})
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)

  const watch = useThrown()
  const flush = useCallback(() => {
    if (timer.current === undefined) return
    clearTimeout(timer.current)
    timer.current = undefined
    const empty = Object.keys(latest.current).length === 0
    watch(empty ? kept.drop() : kept.save(latest.current))
  }, [kept, watch])

  useEffect(() => {
    const load = async () => {
      const found = await kept.load()
      latest.current = { ...found, ...latest.current }
      setValues(latest.current)
      setReady(true)
    }
    watch(load())
    const leave = () => flush()
    document.addEventListener('visibilitychange', leave)
    window.addEventListener('pagehide', leave)
    return () => {
      document.removeEventListener('visibilitychange', leave)
      window.removeEventListener('pagehide', leave)
      flush()
    }
  }, [kept, flush, watch])

  const change = useCallback(
    (next: Record<string, string>) => {
      latest.current = next
      setValues(next)
      clearTimeout(timer.current)
      timer.current = setTimeout(flush, settleMilliseconds)
    },
    [flush],
  )

  const fillIn = useCallback(
    (more: Record<string, string>) => change({ ...more, ...latest.current }),
    [change],
  )

  return {
    values,
    ready,
    fillIn,
    set: (field, text) => change({ ...latest.current, [field]: text }),
    setAll: change,
    clear: (field) => {
      const { [field ?? '']: _, ...rest } = latest.current
      change(field === undefined ? {} : rest)
    },
  }
}
