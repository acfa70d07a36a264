import { type PointerEvent, useRef } from 'react'
import { levelAxis } from '@/core/figure/level-axis.ts'
import { roundedToStep } from '@/core/plan-edits/levels/stepped-value.ts'
import type { Level } from '@/core/trial/level.ts'

/** So far a pointer may stray in a press before the press is a drag. */
const strayPixels = 6

interface Drag {
  level: Level
  tab: HTMLElement
  startX: number
  railPixels: number
  moved: boolean
}

/** A tab of the rail that follows the pointer; where it is let go its level has the value of that place, to a round step. */
export function useDraggedTab(
  levels: readonly Level[],
  move: (levelId: string, value: number) => void,
) {
  const drag = useRef<Drag | null>(null)
  const dragged = useRef<boolean>(false)
  const end = (event: PointerEvent, keep: boolean) => {
    const now = drag.current
    drag.current = null
    if (!now) return
    now.tab.style.transform = ''
    dragged.current = now.moved
    if (!now.moved || !keep || now.level.value === null) return
    const { low, high } = levelAxis(levels)
    const by = ((event.clientX - now.startX) / now.railPixels) * (high - low)
    move(now.level.id, roundedToStep(now.level.value + by, levels))
  }
  return {
    /** Whether the press that is told now was the end of a drag. Asked once. */
    justDragged: () => {
      const was = dragged.current
      dragged.current = false
      return was
    },
    handlers: {
      onPointerDown: (event: PointerEvent<HTMLElement>) => {
        dragged.current = false
        const tab = event.target instanceof Element ? event.target.closest('li button') : null
        const place = tab instanceof HTMLElement ? tab.closest('li') : null
        if (!(tab instanceof HTMLElement) || !place || event.button !== 0) return
        const at = [...(place.parentElement?.children ?? [])].indexOf(place)
        const placed = levelAxis(levels).positions[at]
        const level = levels.find(({ id }) => id === placed?.levelId)
        if (!level || level.value === null) return
        const railPixels = event.currentTarget.clientWidth
        drag.current = { level, tab, startX: event.clientX, railPixels, moved: false }
      },
      onPointerMove: (event: PointerEvent<HTMLElement>) => {
        const now = drag.current
        if (!now) return
        const by = event.clientX - now.startX
        if (!now.moved && Math.abs(by) < strayPixels) return
        if (!now.moved) now.tab.setPointerCapture(event.pointerId)
        now.moved = true
        now.tab.style.transform = `translateX(${by}px)`
      },
      onPointerUp: (event: PointerEvent<HTMLElement>) => end(event, true),
      onPointerCancel: (event: PointerEvent<HTMLElement>) => end(event, false),
    },
  }
}
