import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import sheet from '@/app/bench/key-sheet.module.css'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Paper } from '@/app/kit/page/paper.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import { logLook } from '@/app/services/log-look.ts'
import { useServices } from '@/app/services/services.ts'
import { servingKey } from '@/core/session/serving-key.ts'
import { blindBaker } from '@/core/tasting/baker-blind.ts'
import { onShuffledPlates } from '@/core/trial/served-at-table.ts'
import { keyCoveredText } from '@/core/wording/bench/serving-due-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { RunnerList } from './runner-list.tsx'

/** Which code goes on which piece, folded away until the pieces are plated; it can be printed for a helper. */
export function ServingKey() {
  const { whole, session, plan, covered, unknown, events, log } = useBench()
  const { notebook } = useServices()
  const [printing, setPrinting] = useState(false)
  const [shown, setShown] = useState(false)
  const baker = blindBaker(plan, events)
  // Where cups were shuffled no letter tells a level, and whoever weighs plates too.
  const helped = plan.keyKeptBy === 'helper' || (baker !== null && !unknown)
  if ((covered && !unknown) || onShuffledPlates(plan)) return null
  if (session.dealt.servings.length === 0 && session.dealt.sets.length === 0) return null
  return (
    <details className={styles.key}>
      <summary>Which code goes on which piece</summary>
      <div className={styles.entry}>
        <p className={styles.then}>
          {helped && !shown
            ? keyCoveredText(baker !== null)
            : 'For whoever plates and carries, and for no eye that scores.'}
        </p>
        {helped && !shown ? (
          <>
            <Button
              onPress={async () => {
                await logLook(notebook, whole, 'a helper keeps the key and does not taste')
                setShown(true)
              }}
            >
              I am the helper and do not taste
            </Button>
            {baker === null ? null : (
              <Button
                onPress={() =>
                  log({
                    kind: 'peeked',
                    about: { kind: 'taster', id: baker },
                    reason: 'the baker looked at the key and no longer tastes blind',
                  })
                }
              >
                I bake and look: I no longer taste blind
              </Button>
            )}
          </>
        ) : (
          <>
            {plan.serving === 'as-baked' ? <RunnerList /> : null}
            <KeyTables />
          </>
        )}
        <Button onPress={() => setPrinting(true)}>Print the key</Button>
      </div>
      {printing ? (
        <Paper onDone={() => setPrinting(false)} look={sheet.key}>
          <h1>Key of the codes, session {session.number}</h1>
          <p>For whoever plates, and for no eye that scores.</p>
          <KeyTables />
        </Paper>
      ) : null}
    </details>
  )
}

function KeyTables() {
  const { session, plan, whole, unknown } = useBench()
  const { pieces, sets } = servingKey(session)
  const nameOf = (levelId: string) => {
    const level = plan.levels.find(({ id }) => id === levelId)
    return level ? levelText(level, plan.factor.unitOfMeasure) : ''
  }
  return (
    <>
      <LedgerTable
        caption="Codes of the pieces"
        rowHead="Dough"
        columns={[
          ...(unknown ? [] : [{ key: 'level', head: plan.factor.name, align: 'text' as const }]),
          { key: 'flight', head: 'Flight', align: 'text' },
          { key: 'code', head: 'Code' },
        ]}
        rows={pieces.map(({ pieceId, levelId, letter, flight, code }) => ({
          key: `${pieceId} ${code}`,
          head: unknown ? (
            <b>{letter}</b>
          ) : (
            <LevelTab
              levels={plan.levels}
              levelId={levelId}
              letter={letter}
              size="small"
              letterOnly
            />
          ),
          cells: [
            ...(unknown ? [] : [nameOf(levelId)]),
            flight === null ? 'warm-up' : String(flight),
            code,
          ],
        }))}
      />
      {sets.length > 0 ? (
        <LedgerTable
          caption="Tell-apart sets, from left to right"
          rowHead="Taster"
          columns={[0, 1, 2].slice(0, sets[0]?.samples.length).map((place) => ({
            key: String(place),
            head: `${place + 1}.`,
            align: 'text' as const,
          }))}
          rows={sets.map(({ tasterId, samples }) => ({
            key: tasterId,
            head: tasterName(tasterId, whole.kitchen),
            cells: samples.map(({ code, letter, levelId }) => (
              <span key={code}>
                <b>{code}</b> {letter} {nameOf(levelId)}
              </span>
            )),
          }))}
        />
      ) : null}
    </>
  )
}
