import { type ComponentType, createElement, lazy, useState } from 'react'

/** A part of the page whose program comes when it is first needed. */
export interface LatePart<Props> {
  /** Fetches the program ahead; rejects where it cannot be had now, and may be asked again. */
  fetch: () => Promise<unknown>
  /** The part itself where its program is here, else one that waits for it. */
  view: () => ComponentType<Props>
}

export function latePart<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): LatePart<Props> {
  let here: ComponentType<Props> | null = null
  const fetch = async () => {
    here = await load()
    return here
  }
  const late = lazy(async () => ({ default: await fetch() }))
  return { fetch, view: () => here ?? late }
}

/**
 * Draws a late part, inside a `Suspense`. One whose program is here already is drawn in the very frame it is asked for: a lazy
 * component would give way to the fallback first, after which React holds back what follows for 300 ms.
 */
export function LateView<Props extends object>({
  part,
  props,
}: {
  part: LatePart<Props>
  props: Props
}) {
  const [view] = useState(part.view)
  return createElement(view, props)
}
