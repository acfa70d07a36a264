import type { CsvTrouble } from '@/core/findings/table/csv-trouble.ts'
import type { CsvScores } from '@/core/findings/table/scores-of-csv.ts'
import { csvTroubleText, wideOfferText } from '@/core/wording/files/csv-trouble-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { CommandTrouble } from './trouble.ts'

/** So many of one kind in one column are written out; the others are counted. */
const mostOfAKind = 8

/**
 * Why a table of scores was refused: its troubles with row and column, of many alike the first ones and how many more; the
 * option that answers a question; and the offer to convert a wide table.
 */
export function csvRefusal(file: string, read: Extract<CsvScores, { ok: false }>): CommandTrouble {
  const kinds = [...new Set(read.troubles.map(kindOf))]
  const troubles = kinds.flatMap((kind) => {
    const alike = read.troubles.filter((trouble) => kindOf(trouble) === kind)
    const more = alike.length - mostOfAKind
    return [
      ...alike.slice(0, mostOfAKind).map((trouble) => csvTroubleText(trouble) + answerTo(trouble)),
      ...(more > 0 ? [`and ${countText(more, 'more', 'more')} of the same.`] : []),
    ].map((text) => `${file}: ${text}`)
  })
  const offer = read.wide ? [`${file}: ${wideOfferText(read.wide)} Ask with --wide NAME.`] : []
  return new CommandTrouble([...troubles, ...offer].join('\n'))
}

const kindOf = ({ reason, column }: CsvTrouble) => `${reason} ${column}`

function answerTo({ reason, column, role }: CsvTrouble): string {
  if (reason === 'foot-row') return ' Say --foot leave-out or --foot keep.'
  if (reason === 'alike-names') return ' Say --alike one or --alike two.'
  if (reason !== 'row-twice') return ''
  return column === null
    ? ' Say --as MEANING=COLUMN, or --repeats replicates.'
    : ` Say --as "${role ?? 'replicate'}=${column}".`
}
