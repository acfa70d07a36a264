import type { CsvScores } from '@/core/findings/table/scores-of-csv.ts'
import { csvTroubleText, wideOfferText } from '@/core/wording/files/csv-trouble-text.ts'
import { CommandTrouble } from './trouble.ts'

/** Why a table of scores was refused: every trouble with its row and column, and the offer to convert a wide table. */
export function csvRefusal(file: string, read: Extract<CsvScores, { ok: false }>): CommandTrouble {
  const troubles = read.troubles.map((trouble) => `${file}: ${csvTroubleText(trouble)}`)
  const offer = read.wide ? [`${file}: ${wideOfferText(read.wide)} Ask with --wide NAME.`] : []
  return new CommandTrouble([...troubles, ...offer].join('\n'))
}
