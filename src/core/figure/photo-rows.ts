import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { EventOf } from '@/core/session/event-record.ts'
import { piecesAbout } from '@/core/session/line.ts'
import type { Session } from '@/core/session/session-record.ts'
import { type StepRun, stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { levelAxis } from './level-axis.ts'

export interface RowPhoto {
  photoId: string
  /** UTC milliseconds. */
  at: number
  caption: string
  /** How much the picture shows from edge to edge; null where nobody said. */
  widthMillimetres: number | null
}

/** The photos of one level at one moment, oldest first. `levelId` is null of a dough that is not divided into levels yet, and of the whole session. */
export interface PhotoCell {
  levelId: string | null
  photos: RowPhoto[]
}

/** The photos of one moment of one session, side by side: the levels in the order of the rail, what has none after them. */
export interface PhotoRow {
  session: Session
  plan: Plan
  /** The step that had been begun last; null before the first. */
  step: Step | null
  repeat: number
  cells: PhotoCell[]
  /** The widest view in the row, to which all with a known width are scaled; null where none is known. */
  widestMillimetres: number | null
}

type Photo = EventOf<'photo'>

/**
 * The logged photos as rows to be seen side by side: one row for each moment of each session, in the order of the day. The moment
 * of a photo is the step that had been begun last, when it was taken, on its dough or piece.
 */
export function photoRows(whole: WholeTrial): PhotoRow[] {
  return whole.sessions
    .toSorted((one, other) => one.number - other.number)
    .flatMap((session) => rowsOfSession(whole, session))
}

function rowsOfSession(whole: WholeTrial, session: Session): PhotoRow[] {
  const log = eventsOfSession(whole.events, session.id)
  const photos = log.filter((event): event is Photo => event.kind === 'photo')
  if (photos.length === 0) return []
  const plan = planOfSession(whole, session)
  const runs = stepRuns(session, plan, log)
  const rows = new Map<string, { run: StepRun | undefined; photos: Photo[] }>()
  for (const photo of photos) {
    const run = momentOf(photo, session, runs)
    const key = run ? `${run.step.id} ${run.repeat}` : ''
    const row = rows.get(key)
    if (row) row.photos.push(photo)
    else rows.set(key, { run, photos: [photo] })
  }
  const place = ({ run }: { run: StepRun | undefined }) =>
    run ? plan.steps.findIndex(({ id }) => id === run.step.id) : -1
  return [...rows.values()]
    .toSorted(
      (one, other) =>
        place(one) - place(other) || (one.run?.repeat ?? 0) - (other.run?.repeat ?? 0),
    )
    .map((row) => ({
      ...{ session, plan, step: row.run?.step ?? null, repeat: row.run?.repeat ?? 1 },
      cells: cellsOf(row.photos, session, plan),
      widestMillimetres: widest(row.photos),
    }))
}

/** What was begun last by then on the dough or piece of a photo. */
function momentOf(photo: Photo, session: Session, runs: readonly StepRun[]): StepRun | undefined {
  const { about, at } = photo
  const [piece] = piecesAbout(session, about)
  const line = new Set(about.kind === 'batch' ? [about.id] : piece ? [piece.id, piece.batchId] : [])
  return runs
    .filter(({ unit, startedAt }) => line.has(unit.id) && startedAt !== null && startedAt <= at)
    .toSorted((one, other) => (one.startedAt ?? 0) - (other.startedAt ?? 0))
    .at(-1)
}

function cellsOf(photos: readonly Photo[], session: Session, plan: Plan): PhotoCell[] {
  const byLevel = new Map<string | null, RowPhoto[]>()
  for (const photo of photos) {
    const levelId = levelOf(photo, session)
    const { photoId, at, caption = '', widthMillimetres = null } = photo
    byLevel.set(levelId, [
      ...(byLevel.get(levelId) ?? []),
      { photoId, at, caption, widthMillimetres },
    ])
  }
  const levels = levelAxis(plan.levels).positions.map(({ levelId }) => levelId)
  return [...levels, null].flatMap((levelId) => {
    const own = byLevel.get(levelId)
    return own ? [{ levelId, photos: own }] : []
  })
}

function levelOf({ about }: Photo, session: Session): string | null {
  const batch = session.batches.find(({ id }) => id === about.id)
  return (batch ? batch.levelId : piecesAbout(session, about)[0]?.levelId) ?? null
}

function widest(photos: readonly Photo[]): number | null {
  const known = photos.flatMap(({ widthMillimetres }) => widthMillimetres ?? [])
  return known.length === 0 ? null : Math.max(...known)
}

/**
 * How wide a picture is drawn, as a share of its cell: those of known width at one scale, the widest of the row over the whole cell;
 * null of one whose width nobody knows, which has no scale.
 */
export function shareOfCell(photo: RowPhoto, { widestMillimetres }: PhotoRow): number | null {
  const { widthMillimetres } = photo
  if (widthMillimetres === null || widestMillimetres === null) return null
  return widthMillimetres / widestMillimetres
}

const barSteps = [1, 2, 5]

/** The bar that shows the scale of a row, in whole millimetres: the largest of 1, 2, 5, 10 … that is at most half the widest view. */
export function scaleBarMillimetres(widestMillimetres: number): number {
  const tens = 10 ** Math.floor(Math.log10(widestMillimetres / 2))
  return Math.max(
    ...barSteps.map((step) => step * tens).filter((bar) => bar <= widestMillimetres / 2),
  )
}
