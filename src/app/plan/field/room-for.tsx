import type { ReactNode } from 'react'
import { fullText, type GrowingPart } from '@/core/wording/plan/full-text.ts'

interface Props {
  part: GrowingPart
  count: number
  children: ReactNode
}

/** The press that adds to a part of the plan, or, where the part holds as many as it may, the sentence that says so. */
export function RoomFor({ part, count, children }: Props) {
  const full = fullText(part, count)
  return full === null ? children : <p>{full}</p>
}
