import { useEffect, useState } from 'react'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { arrowsAmong } from '@/app/kit/press/arrows-among.ts'
import { Button } from '@/app/kit/press/button.tsx'
import type { BlindRanking } from '@/core/seal/blind/blind-view.ts'
import {
  pressedCode,
  rankedText,
  rankingTrouble,
  readRanked,
} from '@/core/seal/blind/ranked-codes.ts'
import { samplesAtEnd } from '@/core/seal/blind/samples-at-end.ts'
import {
  placeText,
  rankedWords,
  rankingHow,
  rankingQuestion,
  rankingTroubleText,
} from '@/core/wording/tasting/ranking-text.ts'
import { servingName } from '@/core/wording/tasting/serving-name.ts'
import type { Seat } from './seat.ts'
import { SeatPage } from './seat-page.tsx'
import styles from './tasting.module.css'

interface RankingFormProps {
  seat: Seat
  ranking: BlindRanking
  leave: React.ReactNode
}

/**
 * The samples in one order, pressed first to last. The presses stay where they are, each with the place it has, so that a thumb
 * and a stepping switch find them again; the unfinished order outlives a reload.
 */
export function RankingForm({ seat, ranking, leave }: RankingFormProps) {
  const { now, view } = seat
  const draft = useDraft(seat.draftOf('ranking'))
  const [shares, setShares] = useState(false)
  const [tried, setTried] = useState(false)
  const [done, setDone] = useState(false)
  const { ready, values, fillIn } = draft
  const opened = values.startedAt
  useEffect(() => {
    if (ready && !done && opened === undefined) fillIn({ startedAt: String(now()) })
  }, [ready, done, opened, fillIn, now])
  if (!ready) return null
  const title = 'In what order?'
  const page = { title, titleLook: 'words', name: seat.name, progress: 'all samples' } as const
  if (done)
    return (
      <SeatPage {...page}>
        <p role="status">Sealed.</p>
      </SeatPage>
    )
  const samples = samplesAtEnd(view.servings)
  const nameOf = (code: string) => {
    const sample = samples.find((each) => each.code === code)
    return sample ? servingName(sample) : code
  }
  const ranked = readRanked(values.ranked ?? '')
  const trouble = rankingTrouble(ranked, ranking)
  const press = (code: string) => {
    draft.set('ranked', rankedText(pressedCode(ranked, code, shares)))
    setShares(false)
    setTried(false)
  }
  const seal = async () => {
    setTried(true)
    if (trouble) return
    await seat.sealRanking(ranked, Number(opened ?? now()))
    setDone(true)
    draft.clear()
  }
  const left = ranking.codes.length - ranked.flat().length
  return (
    <SeatPage
      {...page}
      leave={leave}
      foot={
        <Button size="bench" kind={trouble ? 'plain' : 'primary'} onPress={seal}>
          {left > 0 ? `${left} still without a place` : 'Seal this order'}
        </Button>
      }
    >
      <p className={styles.lead}>{rankingQuestion(ranking)}</p>
      <p>{rankingHow(ranking)}</p>
      <div ref={arrowsAmong} className={styles.ranked}>
        {ranking.codes.map((code) => {
          const place = ranked.findIndex((each) => each.includes(code))
          return (
            <Button
              key={code}
              size="bench"
              pressed={place >= 0}
              label={`${nameOf(code)}: ${place < 0 ? 'no place yet' : standing(ranked, place)}`}
              onPress={() => press(code)}
            >
              <span>{nameOf(code)}</span> <span>{place < 0 ? '' : standing(ranked, place)}</span>
            </Button>
          )
        })}
      </div>
      {ranking.ties ? (
        <Button
          pressed={shares}
          disabled={ranked.length === 0 || left === 0}
          onPress={() => setShares(!shares)}
        >
          The next shares the last place
        </Button>
      ) : null}
      <p role="status" className={tried && trouble ? styles.trouble : styles.quiet}>
        {tried && trouble ? rankingTroubleText(trouble, nameOf) : rankedWords(ranked, nameOf)}
      </p>
    </SeatPage>
  )
}

/** “1st”, or “2nd, shared”: places are counted by samples, so that after two that share the second comes the fourth. */
function standing(ranked: readonly (readonly string[])[], place: number): string {
  const before = ranked.slice(0, place).reduce((sum, each) => sum + each.length, 0)
  return `${placeText(before + 1)}${(ranked[place]?.length ?? 1) > 1 ? ', shared' : ''}`
}
