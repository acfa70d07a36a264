import { createStore } from 'zustand'
import type { FailureReason } from '@/core/record/failure-reason.ts'

/** Something that was typed and could not be kept; it is shown wherever the person goes until it is kept or given up. */
export interface Unkept {
  /** One entry for each thing: a plan's page, a form's draft. */
  key: string
  /** What it is, as a person would call it: “the plan of …”. */
  what: string
  /** The text that is at stake, to read or copy; empty where it cannot be told in a line. */
  text: string
  reason: FailureReason | null
  retry: () => Promise<void>
  giveUp: () => void
}

export const unkept = createStore<{ items: readonly Unkept[] }>(() => ({ items: [] }))

/** Shows something as not kept, in place of what stood under its key. */
export function showUnkept(item: Unkept): void {
  unkept.setState(({ items }) => ({
    items: [...items.filter(({ key }) => key !== item.key), item],
  }))
}

/** It is kept now, or given up. */
export function forgetUnkept(key: string): void {
  if (unkept.getState().items.some((item) => item.key === key))
    unkept.setState(({ items }) => ({ items: items.filter((item) => item.key !== key) }))
}
