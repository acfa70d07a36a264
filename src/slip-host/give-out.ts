import { allergensOf } from '@/core/formula/allergens.ts'
import type { BlindView } from '@/core/seal/blind/blind-view.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Notebook } from '@/notebook/notebook.ts'
import { type BallotSlip, bytesOfSlip, openSlot } from '@/slip/ballot-slip.ts'
import { hostOfTexts, newHost, textsOfHost } from '@/slip/kept-host.ts'
import { linkTextOf } from '@/slip/link-text.ts'
import { slipKey } from '@/slip/slip-key.ts'
import type { HostOfSlips, IssuedSlip } from '@/slip/take-return.ts'

/** Under what the slips of a session are kept: on the host's device alone, nothing of them is in the trial's file. */
export const slipsKey = (sessionId: string): string => `slips/${sessionId}`

/**
 * The ballot of a taster (null: everybody's) as the text of a slip, given out now where it was not before or has changed since.
 * `draw` gives whole numbers of 32 bits.
 */
export async function giveOut(
  { notebook, now, draw }: { notebook: Notebook; now: number; draw: () => number },
  whole: WholeTrial,
  sessionId: string,
  tasterId: string | null,
): Promise<string> {
  const session = whole.sessions.find(({ id }) => id === sessionId)
  const state = tastingState(whole, sessionId)
  const whose = tasterId ?? state.tasters.find(({ presence }) => presence !== 'declined')?.tasterId
  if (!session || whose === undefined) throw new Error('a slip is for somebody')
  const host = hostOfTexts(await notebook.draft(slipsKey(sessionId))) ?? newHost(draw)
  const view = blindView(whole, sessionId, whose)
  const issued = issuedFor(host, tasterId, view, Math.floor(now / 60_000))
  const others = host.issued.filter(({ slot }) => slot !== issued.slot)
  if (!host.issued.includes(issued))
    await notebook.keepDraft(
      slipsKey(sessionId),
      textsOfHost({ ...host, issued: [...others, issued] }),
    )
  const plan = planOfSession(whole, session)
  const slip: BallotSlip = {
    tag: host.tag,
    slot: issued.slot,
    issue: issued.issue,
    issuedMinute: issued.issuedMinute,
    key: slipKey(host.secret, issued.slot, issued.issue),
    codes: issued.codes,
    warmUpCode: view.warmUpAtSeat ? view.warmUpCode : null,
    rest: view.rest,
    asksUsual: view.guess !== null,
    asTheyCome: plan.serving === 'as-baked',
    sets: issued.sets,
    tellApart: issued.sets.length > 0 ? view.tellApart : null,
    ranking: view.ranking && {
      ties: view.ranking.ties,
      ...(view.ranking.asks === undefined ? {} : { asks: view.ranking.asks }),
    },
    allergens: allergensOf(plan.formula),
    questions: view.questions.map(({ responseId: _, ...question }) => question),
  }
  return linkTextOf(bytesOfSlip(slip))
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
    ...(view.ranking
      ? { ranks: view.ranking.ties ? ('shared' as const) : ('apart' as const) }
      : {}),
  }
  // The oven may give them in another order than was drawn: a slip that is out lists the same codes, and stays good.
  const listed = (one: Pick<IssuedSlip, 'codes' | 'responseIds' | 'sets' | 'ranks'>) =>
    [one.codes.toSorted(), one.responseIds, one.sets, one.ranks].join()
  const same = known && listed(known) === listed(slip)
  return same ? known : { ...slip, issue: known ? known.issue + 1 : 0, issuedMinute: minute }
}
