import { useMemo, useRef } from 'react'
import { MassField } from '@/app/kit/field/mass-field.tsx'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { draftsOf } from '@/app/services/drafts-of.ts'
import { useServices } from '@/app/services/services.ts'
import { SeatPage } from '@/app/tasting/seat/seat-page.tsx'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { lettersLeft, withTheLast } from '@/core/tasting/plates.ts'
import { type ToTurn, turnedOf } from '@/core/tasting/to-turn.ts'
import { massUnit } from '@/core/units/mass-text.ts'
import { cupSheet } from '@/core/weighing/cup-sheet.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import styles from './alone.module.css'
import { NothingToTell } from './nothing-to-tell.tsx'
import { TurnRows } from './turn-rows.tsx'

/**
 * The plates are turned over: which letter lies under which plate, and, where cups were shuffled, which ticket went with which
 * dough. What was said so far survives a reload; when all is said the codes are opened with it, for good.
 */
export function TurnOver({ wanted }: { wanted: ToTurn }) {
  const { notebook } = useServices()
  const { whole, session } = useTable()
  const place = useRef<HTMLDivElement>(null)
  const draft = useDraft(draftsOf(notebook, `turned/${session.id}`, 'What lay under the plates'))
  const plan = planOfSession(whole, session)
  const cups = useMemo(() => cupSheet(weighSheet(plan, whole.kitchen)), [plan, whole.kitchen])
  if (!draft.ready) return null
  const { rounds, doughs, tickets } = wanted
  const letters = withTheLast(rounds, draft.values)
  const named = doughs.flatMap(({ batchId }) => draft.values[batchId] ?? [])
  const last = tickets.filter(({ ticket }) => !named.includes(ticket))
  const ticketOf: Record<string, string> = Object.fromEntries(
    doughs.flatMap(({ batchId }) => {
      const only = named.length === doughs.length - 1 ? last[0]?.ticket : undefined
      const ticket = draft.values[batchId] ?? only
      return ticket === undefined ? [] : [[batchId, ticket]]
    }),
  )
  const turned = turnedOf(session, wanted, letters, ticketOf)
  const left =
    rounds.reduce((sum, round) => sum + lettersLeft(round, letters).length, 0) +
    doughs.length -
    Object.keys(ticketOf).length
  const find = (found: Record<string, string | null>) => {
    const kept = Object.entries({ ...draft.values, ...found }).filter(
      (entry): entry is [string, string] => entry[1] !== null,
    )
    draft.setAll(Object.fromEntries(kept))
  }
  const open = async () => {
    if (!turned) {
      place.current?.querySelector<HTMLElement>('[data-open]')?.focus()
      return
    }
    const poured = cups.ok
      ? turned.doughs?.flatMap(({ batchId, levelId }) => {
          const planned = cups.cups.find((cup) => cup.levelId === levelId)
          const typed = draft.values[`showed/${ticketOf[batchId]}`]
          const { ingredientId } = cups.row
          const grams = typed === undefined ? planned?.grams : Number(typed)
          return grams === undefined || ingredientId === null
            ? []
            : [{ batchId, ingredientId, grams }]
        })
      : undefined
    await notebook.turnOver({
      trialId: whole.trial.id,
      sessionId: session.id,
      turned,
      cups: poured ?? [],
    })
    draft.clear()
  }
  return (
    <SeatPage
      title={rounds.length > 0 ? 'Turn the plates over' : 'Turn the tickets over'}
      titleLook="words"
      name="Alone at the table"
      progress={left === 0 ? 'all turned' : `${left} still to turn`}
      foot={
        <Button size="bench" kind={turned ? 'primary' : 'plain'} onPress={open}>
          {turned
            ? 'Open the codes for good'
            : `${asSentenceStart(countText(left, rounds.length > 0 ? 'letter' : 'ticket'))} still to say`}
        </Button>
      }
    >
      <p>
        <b>Turn {rounds.length > 0 ? 'the plates' : 'the tickets'} over</b> and say what lies under
        each; the last fills itself in. Scores can no longer be changed.
      </p>
      <div ref={place}>
        {rounds.map((round) => (
          <TurnRows
            key={round.number}
            legend={
              rounds.length === 1
                ? 'Which letter lies under which plate?'
                : `Round ${round.number}: which letter lies under which plate?`
            }
            rows={round.plates.map(({ key, plate }) => ({
              ...{ key, head: String(plate) },
              called: `Round ${round.number}, plate ${plate}`,
            }))}
            choices={round.letters}
            found={letters}
            onFind={find}
          />
        ))}
        {doughs.length > 0 ? (
          <>
            <TurnRows
              legend="Which ticket went with which dough?"
              rows={doughs.map(({ batchId, letter }) => ({
                ...{ key: batchId, head: letter, called: `Dough ${letter}` },
              }))}
              choices={tickets
                .map(({ ticket }) => ticket)
                .toSorted((one, other) => one.localeCompare(other))}
              found={ticketOf}
              onFind={find}
            />
            {cups.ok ? (
              <Fold name="What the scale showed" result="as the sheet asked, where left empty">
                <div className={styles.showed}>
                  {tickets.map(({ ticket, levelId }) => (
                    <MassField
                      key={ticket}
                      label={`Cup ${ticket}`}
                      value={numberOf(draft.values[`showed/${ticket}`])}
                      hint={`The sheet asks ${cups.cups.find((cup) => cup.levelId === levelId)?.text ?? ''} ${massUnit()}.`}
                      check={weightCheck}
                      onValue={(grams) =>
                        find({ [`showed/${ticket}`]: grams === null ? null : String(grams) })
                      }
                    />
                  ))}
                </div>
              </Fold>
            ) : null}
          </>
        ) : null}
      </div>
      <NothingToTell cups={doughs.length > 0} />
    </SeatPage>
  )
}

const weightCheck = (grams: number) =>
  grams < 0 || grams > 10_000 ? 'A cup holds from 0 g to 10,000 g; check the weight.' : undefined

const numberOf = (text: string | undefined) => (text === undefined ? null : Number(text))
