import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { Naming, RungName } from './answer-of-rung.ts'
import { reasonText } from './reason-text.ts'

/** One step of the ladder that shows how far the evidence carries. */
export interface RungLine {
  rung: RungName
  title: string
  claim: string
  says: string
  /** Filled: it answers; half: a hint; hollow: not settled or not answerable. */
  mark: 'full' | 'half' | 'hollow'
}

/** The three rungs of one response, lowest first, each with what it may claim and what it says. */
export function rungLines(found: ResponseFindings, naming: Naming): RungLine[] {
  return (['pieces', 'doughs', 'factor'] as const).map((rung) => ({
    rung,
    title: rungTitle(rung),
    claim: rungClaim(rung, naming, found.conclusion.byTasters),
    ...rungSays(found, rung),
  }))
}

/** What a rung says in a word or two, for the ladder and the tables; the factor's from the conclusion, the others by their F. */
export function rungSays(found: ResponseFindings, rung: RungName): Pick<RungLine, 'says' | 'mark'> {
  const answer = found[rung]
  if (!isPresent(answer)) return { says: reasonText(answer), mark: 'hollow' }
  if (rung !== 'factor')
    return answer.p < 0.05
      ? { says: 'differ', mark: 'half' }
      : { says: 'no difference shown', mark: 'hollow' }
  const { shown, tooSmall, lean, caution } = found.conclusion
  const within = isPresent(tooSmall) && tooSmall.allPairs
  if (caution) return { says: `shown, but ${caution.what} may have done it`, mark: 'half' }
  if (shown.length > 0) {
    const surprise = shown.every(({ unexpected }) => unexpected)
    const said = within ? 'shown, but within your margin' : 'shown'
    return surprise ? { says: `${said}, unexpected`, mark: 'half' } : { says: said, mark: 'full' }
  }
  if (within) return { says: 'all within your margin', mark: 'full' }
  return lean
    ? { says: 'leans, not settled', mark: 'hollow' }
    : { says: 'not settled', mark: 'hollow' }
}

/** What a rung is about, as a heading. */
export function rungTitle(rung: RungName): string {
  if (rung === 'pieces') return 'These pieces'
  return rung === 'doughs' ? 'These doughs' : 'The factor'
}

function rungClaim(rung: RungName, { unit }: Naming, byTasters: boolean): string {
  if (rung === 'pieces') return 'for people like these tasters'
  if (rung === 'doughs') return 'for these people'
  const made = unit === 'batch' ? 'doughs' : 'pieces'
  return `${byTasters ? 'for these tasters, ' : ''}whenever the ${made} are made again`
}
