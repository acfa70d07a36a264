import type { AnswerScale, Better, Response } from '@/core/trial/response.ts'

/** What is better in a response, to start from: a target begins at the middle of its scale. */
export function startedBetter(is: Better['is'], { scale }: Pick<Response, 'scale'>): Better {
  if (is !== 'target') return { is }
  return { is, at: scale.kind === 'just-about-right' ? 3 : scale.kind === 'nine-point' ? 5 : 0 }
}

type Anchors = Extract<AnswerScale, { kind: 'nine-point' }>['anchors']

/** Words beside the points of a scale with those of one point changed; no words, no anchor. */
export function withAnchor(anchors: Anchors, at: number, text: string): Anchors {
  const others = anchors.filter((anchor) => anchor.at !== at)
  return text === '' ? others : [...others, { at, text }].toSorted((a, b) => a.at - b.at)
}
