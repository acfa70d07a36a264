import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { unitName } from '@/app/bench/line-name.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { doughsInWork } from '@/core/session/line.ts'
import type { BenchUnit } from './entry-props.ts'

/** The doughs, or the pieces of the same flight, that one reading may be of. */
export function useAlike(unit: BenchUnit): BenchUnit[] {
  const { session } = useBench()
  if (unit.kind === 'batch') {
    const doughs = doughsInWork(session).map(({ id }): BenchUnit => ({ kind: 'batch', id }))
    return doughs.some(({ id }) => id === unit.id) ? doughs : [unit]
  }
  const own = session.pieces.find(({ id }) => id === unit.id)
  const flight = session.pieces.filter(
    ({ flightId }) => flightId !== null && flightId === own?.flightId,
  )
  return flight.length > 0 ? flight.map(({ id }): BenchUnit => ({ kind: 'piece', id })) : [unit]
}

/** Of which doughs or pieces a reading is: the one in front, until others are pressed. */
export function useSeveral(unit: BenchUnit) {
  const alike = useAlike(unit)
  const [ids, setIds] = useState<ReadonlySet<string>>(new Set([unit.id]))
  const units = alike.filter(({ id }) => ids.has(id))
  return {
    alike,
    units: units.length > 0 ? units : [unit],
    turn: (id: string) => {
      const next = new Set(ids)
      if (!next.delete(id)) next.add(id)
      setIds(next.size > 0 ? next : new Set([unit.id]))
    },
    all: () =>
      setIds(ids.size === alike.length ? new Set([unit.id]) : new Set(alike.map(({ id }) => id))),
  }
}

/** One press for each dough or piece that the reading may be of, and one for all of them. */
export function SeveralUnits({ several }: { several: ReturnType<typeof useSeveral> }) {
  const { session, plan } = useBench()
  const { alike, units, turn, all } = several
  const isOn = (id: string) => units.some((unit) => unit.id === id)
  return (
    <fieldset className={styles.several} aria-label="What it was read of">
      {alike.map((unit) => (
        <Button
          key={unit.id}
          size="bench"
          pressed={isOn(unit.id)}
          onPress={() => {
            if (alike.length > 1) turn(unit.id)
          }}
        >
          {unitName(session, plan, unit).letter}
        </Button>
      ))}
      {alike.length > 1 ? (
        <Button size="bench" pressed={units.length === alike.length} onPress={all}>
          All {alike.length}
        </Button>
      ) : null}
    </fieldset>
  )
}
