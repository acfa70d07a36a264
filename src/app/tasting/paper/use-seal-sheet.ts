import { useServices } from '@/app/services/services.ts'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { readRanked } from '@/core/seal/blind/ranked-codes.ts'
import { servingByCode, setByCodes } from '@/core/tasting/blind-view.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { type Cell, type EndOfSheet, typedAnswers } from './sheet-cells.ts'

/**
 * Seals a typed sheet, code by code. What stands of this taster and says the same is left, so that a sheet that was cut short
 * in the middle is gone on with.
 */
export function useSealSheet(tasterId: string) {
  const { notebook } = useServices()
  const { whole, session } = useTable()
  return async (
    cells: readonly Cell[],
    ends: readonly EndOfSheet[],
    texts: Readonly<Record<string, string>>,
    twice: boolean,
  ): Promise<void> => {
    const typedBy = (texts.by ?? '').trim()
    const stands = effectiveBallots(whole.ballots, session.id).filter(
      (ballot) => ballot.tasterId === tasterId,
    )
    const by = { trialId: whole.trial.id, sessionId: session.id, tasterId }
    const cameBy = {
      way: 'paper',
      typedBy,
      ...(twice ? { typedAgainBy: (texts.againBy ?? '').trim() } : {}),
    } as const
    for (const code of new Set(cells.map((cell) => cell.code))) {
      const serving = servingByCode(session, code)
      if (!serving) throw new Error(`no serving under code ${code}`)
      const answers = typedAnswers(cells, code, texts)
      const before = stands.find(({ about }) => about.id === serving.id)
      if (before && JSON.stringify(before.answers) === JSON.stringify(answers)) continue
      await notebook.sealBallot({
        ...by,
        about: { kind: 'serving', id: serving.id },
        answers,
        cameBy,
        ...(before
          ? { replaces: before.id, change: { by: typedBy, because: 'typed from paper' } }
          : {}),
      })
    }
    for (const { field, set, order } of ends) {
      if (order) {
        const about = { kind: 'ranking', id: session.id } as const
        const ranked = readRanked(texts[field] ?? '')
        await notebook.sealBallot({ ...by, about, answers: [], cameBy, ranked })
        continue
      }
      const picked = (texts[field] ?? '').trim()
      const id = set ? setByCodes(session, tasterId, set)?.id : session.id
      if (id === undefined) throw new Error(`no set of codes ${set?.join()}`)
      await notebook.sealBallot({
        ...by,
        about: { kind: set ? 'set' : 'session', id },
        answers: [],
        cameBy,
        ...(picked === '0' ? {} : { pickedCode: picked }),
      })
    }
  }
}
