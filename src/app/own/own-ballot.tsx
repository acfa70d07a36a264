import { useLiveQuery } from 'dexie-react-hooks'
import { type ReactNode, useState } from 'react'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { guardPresses } from '@/app/kit/press/guard-presses.ts'
import { draftsOf } from '@/app/services/drafts-of.ts'
import { useServices } from '@/app/services/services.ts'
import { AtTheTable } from '@/app/tasting/seat/at-the-table.tsx'
import type { Seat } from '@/app/tasting/seat/seat.ts'
import { SeatPage } from '@/app/tasting/seat/seat-page.tsx'
import { rankedText } from '@/core/seal/blind/ranked-codes.ts'
import { type BallotSlip, openSlot } from '@/slip/ballot-slip.ts'
import { goToBallot } from './ballot-moves.ts'
import {
  choosesCodes,
  doneField,
  type OwnSealed,
  type OwnTexts,
  ownReturn,
  ownView,
  saidOf,
  sealedOf,
  setField,
  textsOfSaid,
} from './own-state.ts'
import { ShowReturn } from './show-return.tsx'
import { WhichCode } from './which-code.tsx'

interface OwnBallotProps {
  slip: BallotSlip
  keptUnder: string
  /** Told after each act, for a ballot that goes back by itself; with what stands at its end in place of the code. */
  onKept?: (texts: OwnTexts) => Promise<void>
  end?: ReactNode
}

/** The slip's ballot as far as its taster has come; at the end the code that goes back to the host. */
export function OwnBallot({ slip, keptUnder, onKept, end }: OwnBallotProps) {
  const { notebook, now, newSeed } = useServices()
  const texts = useLiveQuery(
    async () => (await notebook.draft(keptUnder)) ?? {},
    [notebook, keptUnder],
  )
  const [choosing, setChoosing] = useState(false)
  if (!texts) return null
  /** Keeps one more act; the first draws the number by which the host tells phones apart. */
  const keep = async (change: OwnTexts, act = true) => {
    const before = (await notebook.draft(keptUnder)) ?? {}
    const acts = Number(before.acts ?? 0) + (act ? 1 : 0)
    const after = { nonce: String(newSeed()), ...before, ...change, acts: String(acts) }
    await notebook.keepDraft(keptUnder, after)
    await onKept?.(after)
  }
  const view = ownView(slip, texts)
  const open = slip.slot === openSlot
  const name = open ? (texts.initials ?? '') : 'Your ballot'
  if (texts.declined === 'yes') return <NotTasting onBack={() => keep({ declined: '' }, false)} />
  if (open && name === '') return <WhoAreYou onName={(initials) => keep({ initials }, false)} />
  const left = view.servings.flatMap(({ done, code }) => (done ? [] : [code])).toSorted()
  const next = view.nextCode
  const underCode = (code: string) => `${keptUnder}/${code}`
  if (texts.heard === 'yes' && left.length > 0 && (choosing || (open && next === null)))
    return (
      <WhichCode
        name={name}
        codes={left}
        done={view.servings.length - left.length}
        from={next === null ? null : { code: next, keptUnder: underCode(next) }}
        onCode={async (chosen, along) => {
          if (next !== null)
            await goToBallot(notebook, { from: underCode(next), to: underCode(chosen), along })
          await keep({ chosen }, false)
          setChoosing(false)
        }}
      />
    )
  const seat: Seat = {
    name,
    view,
    allergens: slip.allergens,
    heard: texts.heard === 'yes',
    onHeard: () => keep({ heard: 'yes' }),
    onDecline: () => keep({ declined: 'yes' }, false),
    draftOf: (code) => draftsOf(notebook, underCode(code), 'A half-filled ballot'),
    now,
    sealBallot: (code, sealed) => {
      const before = sealedOf(texts, code)
      const first = before && { firstSealedAt: before.firstSealedAt ?? before.sealedAt }
      const own: OwnSealed = { ...sealed, sealedAt: now(), ...first }
      return keep({ [doneField(code)]: JSON.stringify(own) })
    },
    sealSet: (codes, picked) => {
      const place = slip.sets.findIndex((set) => set.join() === codes.join())
      return keep({ [setField(place)]: picked })
    },
    sealRanking: (ranked) => keep({ ranked: rankedText(ranked) }),
    sealGuess: (code) => keep({ usual: code ?? '' }),
    onLeave: () => undefined,
  }
  return (
    <div ref={guardPresses}>
      <AtTheTable
        seat={seat}
        kept={{
          said: saidOf(slip, texts),
          keep: (more) => keep(textsOfSaid(more), false),
        }}
        atHead={
          choosesCodes(slip) && left.length > 1 ? (
            <Button kind="quiet" size="small" onPress={() => setChoosing(true)}>
              Another code
            </Button>
          ) : null
        }
        end={end ?? <ShowReturn back={ownReturn(slip, texts)} slipKey={slip.key} />}
      />
    </div>
  )
}

function WhoAreYou({ onName }: { onName: (initials: string) => Promise<void> }) {
  const [initials, setInitials] = useState('')
  const [problem, setProblem] = useState<string>()
  const go = async () => {
    const bare = initials.trim()
    if (bare === '') return setProblem('Write the initials or the code the host knows you by.')
    await onName(bare)
  }
  return (
    <SeatPage
      title="Who is tasting?"
      titleLook="words"
      name="A tasting"
      foot={
        <Button size="bench" kind="primary" onPress={go}>
          That is me
        </Button>
      }
    >
      <TextField
        label="Your initials or code"
        hint="Never a full name."
        value={initials}
        onValue={(next) => {
          setInitials(next)
          setProblem(undefined)
        }}
        maxLength={12}
        problem={problem}
      />
    </SeatPage>
  )
}

function NotTasting({ onBack }: { onBack: () => Promise<void> }) {
  return (
    <SeatPage
      title="You do not taste."
      titleLook="words"
      name="A tasting"
      foot={
        <Button size="bench" onPress={onBack}>
          I taste after all
        </Button>
      }
    >
      <p>Tell the host, so that nobody waits for your ballot.</p>
    </SeatPage>
  )
}
