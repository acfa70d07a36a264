import type { Plan } from '@/core/trial/plan-record.ts'
import type { Measure, Response } from '@/core/trial/response.ts'
import type { Standing } from './effective-events.ts'
import type { Unit } from './line.ts'
import { type PieceMeasures, pieceMeasures } from './piece-measures.ts'
import type { Session } from './session-record.ts'

/** One value of a baker's response, of a dough, a piece or (typed in at the table) a serving's piece. */
export interface MeasureValue {
  unit: Unit
  value: number
  /** Measured on a topped piece: never pooled with plain ones. */
  topped: boolean
}

type OfPiece = (piece: PieceMeasures) => number | null

const ofPiece: Partial<Record<Measure, OfPiece>> = {
  'bake-loss': (piece) => piece.bakeLoss?.percent ?? null,
  'bake-time': (piece) => piece.bakeSeconds,
  'oven-spring': (piece) => piece.ovenSpringPercent,
  'specific-volume': (piece) => piece.specificVolume,
  'core-temperature': (piece) => piece.coreCelsius,
}

/**
 * The values of one baker's response in a session. What was typed in for it stands first; what the notebook can work out
 * itself (bake loss in %, bake time in s, oven spring in %, specific volume in mL/g, core and dough temperature in °C, rise
 * in %) fills the doughs or pieces for which nothing was typed. Dough temperature is the first reading, taken out of the mixer;
 * rise the last. Spare and warm-up pieces count for nothing.
 */
export function measureValues(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
  response: Response,
): MeasureValue[] {
  if (response.by !== 'baker') return []
  const typed = typedValues(session, effective, response.id)
  const known = new Set(typed.map(({ unit }) => unit.id))
  const derived =
    response.scale.kind === 'measured'
      ? derivedValues(session, plan, effective, response.scale.measure)
      : []
  const counted = new Set(
    session.pieces.filter((piece) => piece.role === 'counted').map((piece) => piece.id),
  )
  return [...typed, ...derived.filter(({ unit }) => !known.has(unit.id))].filter(
    ({ unit }) => unit.kind === 'batch' || counted.has(unit.id),
  )
}

function typedValues(
  session: Session,
  effective: readonly Standing[],
  responseId: string,
): MeasureValue[] {
  const values = new Map<string, MeasureValue>()
  for (const event of effective) {
    if (event.kind !== 'measured' || event.responseId !== responseId) continue
    const unit = unitAbout(session, event.about)
    if (unit) values.set(unit.id, { unit, value: event.value, topped: false })
  }
  return [...values.values()]
}

function unitAbout(session: Session, about: { kind: string; id: string }): Unit | null {
  if (session.batches.some((batch) => batch.id === about.id)) return { kind: 'batch', id: about.id }
  const serving = session.dealt.servings.find((one) => one.id === about.id)
  const pieceId = serving?.pieceId ?? about.id
  return session.pieces.some((piece) => piece.id === pieceId)
    ? { kind: 'piece', id: pieceId }
    : null
}

function derivedValues(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
  measure: Measure,
): MeasureValue[] {
  const read = ofPiece[measure]
  if (read)
    return pieceMeasures(session, plan, effective).flatMap((piece) => {
      const value = read(piece)
      const topped = measure === 'bake-loss' && (piece.bakeLoss?.topped ?? false)
      return value === null ? [] : [{ unit: { kind: 'piece', id: piece.pieceId }, value, topped }]
    })
  const values = new Map<string, MeasureValue>()
  for (const event of effective) {
    const unit = unitAbout(session, event.about)
    if (!unit) continue
    if (measure === 'rise' && event.kind === 'rise')
      values.set(unit.id, { unit, value: event.percent, topped: false })
    if (measure === 'dough-temperature' && isDoughReading(event) && !values.has(unit.id))
      values.set(unit.id, { unit, value: event.celsius, topped: false })
  }
  return [...values.values()]
}

const isDoughReading = (event: Standing): event is Extract<Standing, { kind: 'temperature' }> =>
  event.kind === 'temperature' && event.of === 'dough'
