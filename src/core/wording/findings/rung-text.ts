import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings, VerdictKind } from '@/core/findings/response-findings-shape.ts'
import type { Naming, RungName } from './answer-of-rung.ts'
import { reasonText } from './reason-text.ts'

const kinds: Record<VerdictKind, string> = {
  matters: 'matters',
  differs: 'differs, size unsure',
  'too-small': 'too small to matter',
  leans: 'leans',
  'not-settled': 'not settled',
}

/** One step of the ladder that shows how far the evidence carries. */
export interface RungLine {
  rung: RungName
  title: string
  claim: string
  says: string
  /** Filled: it answers; half: it leans; hollow: not settled or not answerable. */
  mark: 'full' | 'half' | 'hollow'
}

/** The three rungs of one response, lowest first, each with what it may claim and what it says. */
export function rungLines(found: ResponseFindings, naming: Naming): RungLine[] {
  return (['pieces', 'doughs', 'factor'] as const).map((rung) => {
    const verdict = found.verdict[rung]
    return {
      rung,
      title: rungTitle(rung),
      claim: rungClaim(rung, naming),
      says: isPresent(verdict) ? kinds[verdict.kind] : reasonText(verdict),
      mark: isPresent(verdict) ? markOf(verdict.kind) : 'hollow',
    }
  })
}

/** A verdict in a word or two, for the ladder and the tables. */
export function verdictWord(kind: VerdictKind): string {
  return kinds[kind]
}

/** What a rung is about, as a heading. */
export function rungTitle(rung: RungName): string {
  if (rung === 'pieces') return 'These pieces'
  return rung === 'doughs' ? 'These doughs' : 'The factor'
}

function rungClaim(rung: RungName, { unit }: Naming): string {
  if (rung === 'pieces') return 'for people like these tasters'
  if (rung === 'doughs') return 'for these people'
  return unit === 'batch'
    ? 'for these tasters, whenever the doughs are made again'
    : 'for these tasters, whenever the pieces are made again'
}

function markOf(kind: VerdictKind): RungLine['mark'] {
  if (kind === 'leans') return 'half'
  return kind === 'not-settled' ? 'hollow' : 'full'
}
