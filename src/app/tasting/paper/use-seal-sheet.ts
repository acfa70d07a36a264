import { useServices } from '@/app/services/services.ts'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { readRanked } from '@/core/seal/blind/ranked-codes.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import { servingByCode, setByCodes } from '@/core/tasting/blind-view.ts'
import { standingBallots } from '@/core/whole-trial/standing-ballots.ts'
import { type Cell, type EndOfSheet, typedAnswers } from './sheet-cells.ts'

/** A sheet as it was typed. */
interface SheetToSeal {
  /** The codes that nothing was sealed of, in the order of the sheet, also where nothing is scored of them. */
  codes: readonly string[]
  cells: readonly Cell[]
  ends: readonly EndOfSheet[]
  texts: Readonly<Record<string, string>>
  twice: boolean
}

/**
 * Seals a typed sheet, code by code. What stands of this taster and says the same is left, so that a sheet that was cut short
 * in the middle is gone on with.
 */
export function useSealSheet(tasterId: string) {
  const { notebook } = useServices()
  const { whole, session, state } = useTable()
  // Once the tasting is over a sheet is kept apart: it stands beside whatever came, late ones of its own aside.
  const over = state.seal === 'closed' || state.seal === 'unsealed'
  return async ({ codes, cells, ends, texts, twice }: SheetToSeal): Promise<void> => {
    const typedBy = (texts.by ?? '').trim()
    const by = { trialId: whole.trial.id, sessionId: session.id, tasterId }
    const late = over ? ({ late: true } as const) : {}
    const replacing = (about: Ballot['about']) => {
      const [before] = standingBallots(whole.ballots, { ...by, about })
      const change = { by: typedBy, because: 'typed from paper' }
      return { before, how: before ? { replaces: before.id, change } : {} }
    }
    const cameBy = {
      way: 'paper',
      typedBy,
      ...(twice ? { typedAgainBy: (texts.againBy ?? '').trim() } : {}),
    } as const
    for (const code of codes) {
      const serving = servingByCode(session, code)
      if (!serving) throw new Error(`no serving under code ${code}`)
      const answers = typedAnswers(cells, code, texts)
      const about = { kind: 'serving', id: serving.id } as const
      const { before, how } = replacing(about)
      if (before && JSON.stringify(before.answers) === JSON.stringify(answers)) continue
      await notebook.sealBallot({ ...by, about, answers, cameBy, ...how, ...late })
    }
    for (const { field, set, order } of ends) {
      if (order) {
        const about = { kind: 'ranking', id: session.id } as const
        const ranked = readRanked(texts[field] ?? '')
        const { how } = replacing(about)
        await notebook.sealBallot({ ...by, about, answers: [], cameBy, ranked, ...how, ...late })
        continue
      }
      const picked = (texts[field] ?? '').trim()
      const id = set ? setByCodes(session, tasterId, set)?.id : session.id
      if (id === undefined) throw new Error(`no set of codes ${set?.join()}`)
      const about = { kind: set ? 'set' : 'session', id } as const
      await notebook.sealBallot({
        ...{ ...by, about, answers: [], cameBy },
        ...(picked === '0' ? {} : { pickedCode: picked }),
        ...replacing(about).how,
        ...late,
      })
    }
  }
}
