import { type ComponentType, createElement, type ReactNode, useEffect, useState } from 'react'
import { stylesAnew, watchStyles } from './lost-styles.ts'

/** A part of the page whose program comes when it is first needed. */
export interface LatePart<Props> {
  /** Fetches the program ahead; rejects where it cannot be had now, and may be asked again. */
  fetch: () => Promise<ComponentType<Props>>
  /** The part itself where its program is here, else null. */
  here: () => ComponentType<Props> | null
}

export function latePart<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): LatePart<Props> {
  let here: ComponentType<Props> | null = null
  const fetch = async () => {
    watchStyles()
    await stylesAnew()
    here = await load()
    return here
  }
  return { fetch, here: () => here }
}

interface LateViewProps<Props> {
  part: LatePart<Props>
  props: Props
  /** What stands there while the program is on its way. */
  waiting: ReactNode
}

type Found<Props> = { view: ComponentType<Props> | null } | { cause: unknown }

/** A late part as soon as its program is here; one that cannot be had now fails into the nearest error boundary. */
export function useLate<Props extends object>(part: LatePart<Props>): ComponentType<Props> | null {
  const [found, setFound] = useState<Found<Props>>(() => ({ view: part.here() }))
  const missing = 'view' in found && found.view === null
  useEffect(() => {
    if (!missing) return
    const asked = { stopped: false }
    part.fetch().then(
      (view) => {
        if (!asked.stopped) setFound({ view })
      },
      (cause: unknown) => {
        if (!asked.stopped) setFound({ cause })
      },
    )
    return () => {
      asked.stopped = true
    }
  }, [part, missing])
  if ('cause' in found) throw found.cause
  return found.view
}

/**
 * Draws a late part. One whose program is here already is drawn in the very frame it is asked for. One that cannot be had now
 * fails into the nearest error boundary, and drawn anew it is fetched anew: React’s own `lazy` would keep the failure for as
 * long as the page is open, and after giving way to a fallback hold back what follows for 300 ms.
 */
export function LateView<Props extends object>({ part, props, waiting }: LateViewProps<Props>) {
  const view = useLate(part)
  return view === null ? waiting : createElement(view, props)
}

/** A component of its own whose program comes when it is first drawn; see `LateView`. */
export function lateComponent<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  waiting: ReactNode,
): ComponentType<Props> {
  const part = latePart(load)
  return (props) => createElement(LateView<Props>, { part, props, waiting })
}
