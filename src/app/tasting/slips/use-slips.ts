import { useLiveQuery } from 'dexie-react-hooks'
import { useServices } from '@/app/services/services.ts'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { allergensOf } from '@/core/formula/allergens.ts'
import type { BlindView } from '@/core/seal/blind/blind-view.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { type BallotSlip, bytesOfSlip, openSlot } from '@/slip/ballot-slip.ts'
import { hostOfTexts, newHost, textsOfHost } from '@/slip/kept-host.ts'
import { linkTextOf } from '@/slip/link-text.ts'
import { slipKey } from '@/slip/slip-key.ts'
import type { HostOfSlips, IssuedSlip } from '@/slip/take-return.ts'

export interface SlipsOfSession {
  /** Null until the first slip is given out. */
  host: HostOfSlips | null
  /** The link that carries a taster's ballot (null: everybody's), given out now if it was not before. */
  handOut: (tasterId: string | null) => Promise<string>
}

/** The slips of the session at the table, kept on this device alone: nothing of them is in the trial's file. */
export function useSlips(): SlipsOfSession | undefined {
  const { notebook, now, newSeed } = useServices()
  const { whole, session, state } = useTable()
  const key = `slips/${session.id}`
  const texts = useLiveQuery(async () => (await notebook.draft(key)) ?? {}, [notebook, key])
  if (!texts) return undefined
  const handOut = async (tasterId: string | null) => {
    const host = hostOfTexts(await notebook.draft(key)) ?? newHost(newSeed)
    const whose =
      tasterId ?? state.tasters.find(({ presence }) => presence !== 'declined')?.tasterId
    if (whose === undefined) throw new Error('a slip is for somebody')
    const view = blindView(whole, session.id, whose)
    const issued = issuedFor(host, tasterId, view, Math.floor(now() / 60_000))
    const others = host.issued.filter(({ slot }) => slot !== issued.slot)
    await notebook.keepDraft(key, textsOfHost({ ...host, issued: [...others, issued] }))
    const plan = planOfSession(whole, session)
    const slip: BallotSlip = {
      tag: host.tag,
      slot: issued.slot,
      issue: issued.issue,
      issuedMinute: issued.issuedMinute,
      key: slipKey(host.secret, issued.slot, issued.issue),
      codes: issued.codes,
      warmUpCode: view.warmUpCode,
      rest: view.rest,
      asksUsual: view.guess !== null,
      sets: issued.sets,
      tellApart: issued.sets.length > 0 ? view.tellApart : null,
      allergens: allergensOf(plan.formula),
      questions: view.questions.map(({ responseId: _, ...question }) => question),
    }
    return `${location.origin}${location.pathname}#/slip/${linkTextOf(bytesOfSlip(slip))}`
  }
  return { host: hostOfTexts(texts), handOut }
}

/** The slip as it was given out before where nothing changed since; else the next issue of its slot, the older one being stale. */
function issuedFor(
  { issued }: HostOfSlips,
  tasterId: string | null,
  view: BlindView,
  minute: number,
): IssuedSlip {
  const codes = view.servings.map(({ code }) => code)
  const known = issued.find((slip) => slip.tasterId === tasterId)
  const own = issued.filter(({ slot }) => slot !== openSlot)
  const slip = {
    slot: tasterId === null ? openSlot : (known?.slot ?? own.length + 1),
    codes: tasterId === null ? codes.toSorted((one, other) => one.localeCompare(other)) : codes,
    responseIds: view.questions.map(({ responseId }) => responseId),
    // Sets are dealt to one taster: a slip for everybody has none.
    sets: tasterId === null ? [] : view.sets.map((set) => set.codes),
    tasterId,
  }
  const same =
    known &&
    [known.codes, known.responseIds, known.sets].join() ===
      [slip.codes, slip.responseIds, slip.sets].join()
  return same ? known : { ...slip, issue: known ? known.issue + 1 : 0, issuedMinute: minute }
}
