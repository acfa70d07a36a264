import { useState } from 'react'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { restAfter } from '@/core/seal/blind/rest-after.ts'
import { servingName } from '@/core/wording/tasting/serving-name.ts'
import { BallotForm } from './ballot-form.tsx'
import { BeforeFirst } from './before-first.tsx'
import { GuessForm } from './guess-form.tsx'
import { LeaveBallot } from './leave-ballot.tsx'
import { PausePage } from './pause-page.tsx'
import { RankingForm } from './ranking-form.tsx'
import type { KeptSaid } from './said.ts'
import type { Seat } from './seat.ts'
import { SeatPage } from './seat-page.tsx'
import { SetForm } from './set-form.tsx'
import styles from './tasting.module.css'
import { WarmUpPage } from './warm-up-page.tsx'

interface AtTheTableProps {
  seat: Seat
  /** Where what the taster says between samples outlives this page; else it is forgotten with it. */
  kept?: KeptSaid | undefined
  /** What stands in the head beside a sample in place of leaving: a phone of one's own is not handed on. */
  atHead?: React.ReactNode
  /** What stands at the end in place of handing the device on. */
  end?: React.ReactNode
  /** The press at the end in place of handing the device on. */
  lastPress?: { words: string; onPress: () => Promise<void> } | undefined
}

/** One taster with the device: the next code in their order, its questions, the seal, a pause; at the end it is handed on. */
export function AtTheTable({ seat, kept, atHead, end, lastPress }: AtTheTableProps) {
  const { view } = seat
  const [againCode, setAgainCode] = useState<string | null>(null)
  const [warmedUpNow, setWarmedUp] = useState(false)
  const [restedNow, setRestedAfter] = useState<number | null>(null)
  const [lastNow, setLastCode] = useState<string | null>(null)
  const warmedUp = warmedUpNow || kept?.said.warmedUp === true
  const lastSealed = kept?.said.lastSealed ?? null
  const lastCode = lastNow ?? lastSealed?.code ?? null
  const code = againCode ?? view.nextCode
  const serving = view.servings.find((each) => each.code === code)
  const last = view.servings.find((each) => each.code === lastCode) ?? null
  const openSet = view.sets.find((set) => !set.done)
  const tasted = view.servings.filter((each) => each.done).length
  const rested = restedNow === tasted || kept?.said.restedAfter === tasted
  const onHad = () => {
    setWarmedUp(true)
    return kept?.keep({ warmedUp: true })
  }
  const onHave = () => {
    setRestedAfter(tasted)
    return kept?.keep({ restedAfter: tasted })
  }
  const leave = atHead === undefined ? <LeaveBallot onLeave={() => seat.onLeave(false)} /> : null
  if (!seat.heard) return <BeforeFirst seat={seat} />
  if (serving) {
    if (view.warmUpAtSeat && tasted === 0 && !warmedUp)
      return <WarmUpPage seat={seat} first={serving} onHad={onHad} />
    const restSeconds =
      againCode === null && (tasted > 0 || warmedUp) ? restAfter(view.rest, tasted) : 0
    if (restSeconds > 0 && !rested)
      return (
        <PausePage
          key={`before ${serving.code}`}
          seat={seat}
          sealed={last}
          serving={serving}
          restSeconds={restSeconds}
          since={lastSealed?.at}
          progress={`${tasted} of ${view.servings.length} done`}
          leave={atHead}
          onHave={onHave}
        />
      )
    return (
      <BallotForm
        key={serving.code}
        seat={seat}
        serving={serving}
        sealedBefore={last}
        leave={againCode === null ? (atHead ?? leave) : leave}
        onMend={setAgainCode}
        onDone={() => {
          setLastCode(serving.code)
          setAgainCode(null)
        }}
      />
    )
  }
  if (view.ranking && !view.ranking.done)
    return <RankingForm seat={seat} ranking={view.ranking} leave={leave} />
  if (openSet) return <SetForm key={openSet.codes.join()} seat={seat} set={openSet} leave={leave} />
  if (view.guess && !view.guess.done)
    return <GuessForm seat={seat} guess={view.guess} leave={leave} />
  return <Finished seat={seat} end={end} lastPress={lastPress} onMend={setAgainCode} />
}

interface FinishedProps extends Pick<AtTheTableProps, 'seat' | 'end' | 'lastPress'> {
  onMend: (code: string) => void
}

function Finished({ seat, end, lastPress, onMend }: FinishedProps) {
  const done = seat.view.servings.filter((each) => each.done)
  return (
    <SeatPage
      title="Thank you."
      titleLook="words"
      name={seat.name}
      progress={`${done.length} of ${seat.view.servings.length} sealed`}
      foot={
        end === undefined ? (
          <Button
            kind="primary"
            size="bench"
            onPress={lastPress?.onPress ?? (() => seat.onLeave(true))}
          >
            {lastPress?.words ?? 'Hand the device on'}
          </Button>
        ) : null
      }
    >
      <p className={styles.lead}>All your ballots are sealed.</p>
      {end}
      {done.length > 0 ? (
        <Fold name="Change a sealed ballot of mine" result={`${done.length} sealed`}>
          <div className={styles.seats}>
            {done.map((each) => (
              <Button key={each.code} onPress={() => onMend(each.code)}>
                {each.plate === undefined
                  ? each.code
                  : `${servingName(each)}, ${each.position} of ${done.length}`}
              </Button>
            ))}
          </div>
        </Fold>
      ) : null}
    </SeatPage>
  )
}
