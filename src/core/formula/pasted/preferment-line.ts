import { isPreferment, kindOfName } from '@/core/formula/kind-of-name.ts'
import type { Entry } from './pasted-text.ts'
import { ingredientsIn } from './split-line.ts'
import { statedAmounts } from './stated-amount.ts'
import { readLine } from './text-line.ts'

const hydrationSaid =
  /[,(]?\s*(?:(?:at|à|mit|zu|al|with)\s+)?(\d+(?:[.,]\d+)?)\s*%\s*(?:d['’]\s?|de\s|di\s|of\s)?(?:hydr\p{L}*\.?|idrat\p{L}*)\s*\)?|[,(]?\s*(?:hydr\p{L}*\.?|idrat\p{L}*)\s*:?\s*(?:von\s|à\s|of\s|al\s|at\s)?\s*(\d+(?:[.,]\d+)?)\s*%?\s*\)?/iu
const doughYield = /[,(]?\s*TA\s*:?\s*(\d{3})\s*\)?/u
const equalFeeding = /[,(]?\s*\d+\s*[:/]\s*(\d+)\s*[:/]\s*(\d+)\s*\)?/u
const atPercent = /\s(?:at|à|al|zu|mit)\s(\d{2,3})\s*%/iu
const poolish = /poolish|pouliche/iu
const all =
  /(?<!\p{L})(?:all(?:\sof)?|whole|entire|gesamte[rns]?|ganze[rns]?|tout(?:e)?|tutt[oa]|from above|as above|von oben|ci-dessus)(?!\p{L})/iu
/** These hold salt, fat or a ratio of their own, which a hydration does not tell. */
const needsBuild =
  /p[aâ]te ferment|pasta di riporto|old dough|altteig|alter teig|tangzhong|yudane|br[üu]hst|quellst|kochst|soaker|scald/iu
const stiff = /stiff|madre|solido|dur(?!\p{L})|fest/iu

/** A line that names flour and water already mixed, with its amount, hydration or build; null where it names none. */
export function prefermentIn(item: string, section: number): Entry | null {
  const build = buildIn(item)
  const bare = build.length > 0 ? item.replace(/\([^()]*\)|=.*$/gu, ' ') : item
  const { text, percent } = withoutHydration(bare)
  const read = readLine(text)
  if (!isPreferment(read.name)) return null
  const name = read.name.replace(all, ' ').replace(/[()]/gu, ' ').replace(/\s+/gu, ' ').trim()
  const isAll = !read.ok && read.reason === 'no-amount'
  if (!read.ok && !isAll) return { is: 'question', why: read.reason, name, kind: null, mends: [] }
  const usual = stiff.test(name) ? 50 : 100
  const mends = needsBuild.test(name) ? [] : [`${item} (${usual} % hydration)`]
  return {
    is: 'preferment',
    name,
    amount: read.ok
      ? read.grams === null
        ? { grams: null, percent: read.percent }
        : { grams: read.grams, percent: null }
      : null,
    hydrationPercent: percent ?? (poolish.test(name) ? 100 : null),
    build,
    besidePercent: read.ok && read.grams !== null ? read.besidePercent : null,
    section,
    mends,
  }
}

/** The hydration that a line says in so many words, in percent; null where it says none. */
export function hydrationSaidIn(item: string): number | null {
  const said = hydrationSaid.exec(item)
  return said ? number(said[1] ?? said[2]) : null
}

/** Whether a hydration alone does not tell what a preferment holds. */
export function asksForBuild(name: string): boolean {
  return needsBuild.test(name)
}

/** The flour and water that stand in brackets, or behind a sign of equality, at a preferment. */
function buildIn(item: string) {
  const inside = /\(([^()]*)\)/u.exec(item)?.[1] ?? /=\s*(.+)$/u.exec(item)?.[1] ?? ''
  if (statedAmounts(inside).length < 2) return []
  const parts = ingredientsIn(inside).map(readLine)
  return parts.every((one) => one.ok && one.grams !== null)
    ? parts.flatMap((one) =>
        one.ok && one.grams !== null
          ? [{ name: one.name, kind: kindOfName(one.name), grams: one.grams }]
          : [],
      )
    : []
}

function withoutHydration(item: string): { text: string; percent: number | null } {
  const said = hydrationSaid.exec(item)
  if (said) return { text: item.replace(said[0], ' '), percent: number(said[1] ?? said[2]) }
  const yielded = doughYield.exec(item)
  if (yielded) return { text: item.replace(yielded[0], ' '), percent: number(yielded[1]) - 100 }
  const fed = equalFeeding.exec(item)
  if (fed && fed[1] === fed[2]) return { text: item.replace(fed[0], ' '), percent: 100 }
  const at = statedAmounts(item).length > 0 ? atPercent.exec(item) : null
  if (at) return { text: item.replace(at[0], ' '), percent: number(at[1]) }
  return { text: item, percent: null }
}

const number = (text: string | undefined) => Number((text ?? '0').replace(',', '.'))
