import type { Detectable, DetectableRung } from '@/core/design/detectable.ts'
import type { WhatWouldHelp } from '@/core/design/what-would-help.ts'
import type { Response } from '@/core/trial/response.ts'
import { decimalText } from '@/core/wording/number-text.ts'

const why: Record<Extract<DetectableRung, { ok: false }>['reason'], string> = {
  'needs-two-tasters': 'needs two tasters',
  'needs-two-flights': 'needs two flights',
  'needs-two-sessions': 'needs two sessions',
  'needs-two-blocks': 'needs two blocks',
  'needs-two-levels': 'needs two levels',
  'factor-answers': 'answered by the factor',
}

/** In a baker's words: how big a difference must be for this design to show it, about the pieces and about the factor. */
export function detectSentence(
  { thesePieces, theFactor }: Detectable,
  main: Response | undefined,
): string {
  const margin = main?.margin ?? null
  if (!thesePieces.ok && !theFactor.ok)
    return `As planned, nothing can be told yet: it ${why[thesePieces.reason]}.`
  const pieces = thesePieces.ok
    ? `Between these pieces a true difference of about ${points(thesePieces.wouldShow)} would show. `
    : ''
  const factor = theFactor.ok
    ? `For the factor itself it takes about ${points(theFactor.wouldShow)}.`
    : `About the factor itself nothing can be said: that ${why[theFactor.reason]}.`
  const short =
    margin !== null && theFactor.ok && theFactor.wouldShow > margin
      ? ` Your margin of ${decimalText(margin, margin % 1 === 0 ? 0 : 1)} is finer than that.`
      : ''
  return `${pieces}${factor}${short}`
}

/** Said in place of a number where the usual spreads of a nine-point scale do not apply. */
export function notOnPoints({ name }: Response): string {
  return `How far answers scatter is known for nine-point scales only. For ${name} the first sessions will tell.`
}

/** The design as planned and each single step more, as rows of a small table. */
export function detectRows(help: WhatWouldHelp): { key: string; head: string; cells: string[] }[] {
  const steps: [keyof WhatWouldHelp, string][] = [
    ['now', 'As planned'],
    ['anotherSession', 'One session more'],
    ['twoMoreTasters', 'Two tasters more'],
    ['oneLevelLess', 'One level less'],
  ]
  return steps.flatMap(([key, head]) => {
    const design = help[key]
    return design ? [{ key, head, cells: [cell(design.thesePieces), cell(design.theFactor)] }] : []
  })
}

const cell = (rung: DetectableRung) => (rung.ok ? decimalText(rung.wouldShow, 1) : why[rung.reason])

const points = (value: number) => `${decimalText(value, 1)} points`
