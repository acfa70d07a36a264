import { useRef } from 'react'
import { useWidth } from '@/app/kit/look/use-width.ts'
import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import type { DayPicture, DoughBar } from '@/core/clock-plan/day-picture.ts'
import type { Level } from '@/core/trial/level.ts'
import type { DayMoments } from '@/core/wording/plan/clock-day-text.ts'
import styles from './clock-figure.module.css'

interface Props {
  picture: DayPicture
  levels: readonly Level[]
  moments: DayMoments
  /** For paper: across, whatever the width of the screen. */
  across?: boolean
}

const narrowPixels = 640

/** The day drawn: a bar for each dough (filled hands, open waiting, thick oven), then the hands, then the oven by loads. */
export function ClockFigure({ picture, levels, moments, across = false }: Props) {
  const strut = useRef<HTMLDivElement>(null)
  const width = useWidth(strut, narrowPixels)
  const down = !across && width < narrowPixels
  return (
    <div className={down ? styles.down : styles.across}>
      <div ref={strut} />
      {down ? (
        <Down picture={picture} levels={levels} moments={moments} />
      ) : (
        <Across picture={picture} levels={levels} moments={moments} />
      )}
    </div>
  )
}

const hourSteps = [900, 1800, 3600, 7200, 14_400, 21_600, 43_200, 86_400]

/** Whole hours of the wall clock to draw lines at, few enough to be read. */
function ticksOf({ fromSeconds, toSeconds }: DayPicture, moments: DayMoments): number[] {
  const step = hourSteps.find((each) => (toSeconds - fromSeconds) / each <= 8) ?? 172_800
  const ticks: number[] = []
  for (let at = Math.floor(fromSeconds); at <= toSeconds; at += 60) {
    const [hour = 0, minute = 0, second = 0] = moments.time(at).split(':').map(Number)
    const ofDay = hour * 3600 + minute * 60 + second
    if (ofDay % Math.min(step, 86_400) < 60) ticks.push(at - (ofDay % 60))
  }
  return ticks
}

const place = ({ fromSeconds, toSeconds }: DayPicture) => {
  const span = Math.max(1, toSeconds - fromSeconds)
  return (at: number) => ((at - fromSeconds) / span) * 100
}

function Across({ picture, levels, moments }: Props) {
  const left = place(picture)
  const stretch = (from: number, to: number) => ({
    insetInlineStart: `${left(from)}%`,
    inlineSize: `max(2px, ${left(to) - left(from)}%)`,
  })
  const ticks = ticksOf(picture, moments)
  return (
    <div className={styles.rows} aria-hidden="true">
      <div className={`${styles.row} ${styles.times}`}>
        <span className={styles.head} />
        <div className={styles.track}>
          {ticks.map((at) => (
            <span key={at} className={styles.time} style={{ insetInlineStart: `${left(at)}%` }}>
              {moments.time(at)}
            </span>
          ))}
        </div>
      </div>
      {picture.bars.map((bar) => (
        <div key={bar.id} className={styles.row}>
          <span className={styles.head}>
            <BarHead bar={bar} levels={levels} />
          </span>
          <div className={styles.track}>
            {ticks.map((at) => (
              <i key={at} className={styles.tick} style={{ insetInlineStart: `${left(at)}%` }} />
            ))}
            <i className={styles.bar} style={stretch(bar.from, bar.to)} />
            {bar.off.map((each) => (
              <i
                key={each.fromSeconds}
                className={styles.off}
                style={stretch(each.fromSeconds, each.toSeconds)}
              >
                <b>
                  ◆ <span>{Math.round((each.toSeconds - each.fromSeconds) / 60)}</span>
                </b>
              </i>
            ))}
            {bar.oven.map((each) => (
              <i
                key={each.fromSeconds}
                className={styles.oven}
                style={stretch(each.fromSeconds, each.toSeconds)}
              />
            ))}
            {bar.hands.map((each) => (
              <i
                key={`${each.fromSeconds} ${each.toSeconds}`}
                className={styles.hand}
                style={stretch(each.fromSeconds, each.toSeconds)}
              />
            ))}
          </div>
        </div>
      ))}
      <div className={`${styles.row} ${styles.first}`}>
        <span className={styles.head}>Hands</span>
        <div className={styles.track}>
          {picture.hands.map((each) => (
            <i
              key={each.id}
              className={styles.hand}
              style={stretch(each.fromSeconds, each.toSeconds)}
            />
          ))}
        </div>
      </div>
      <div className={styles.row}>
        <span className={styles.head}>Oven</span>
        <div className={styles.track}>
          {picture.loads.map((load) => (
            <i
              key={load.number}
              className={styles.load}
              style={stretch(load.fromSeconds, load.toSeconds)}
            >
              {load.number}
            </i>
          ))}
        </div>
      </div>
    </div>
  )
}

function Down({ picture, levels, moments }: Props) {
  const top = place(picture)
  const stretch = (from: number, to: number) => ({
    insetBlockStart: `${top(from)}%`,
    blockSize: `max(2px, ${top(to) - top(from)}%)`,
  })
  const ticks = ticksOf(picture, moments)
  return (
    <div className={styles.columns} aria-hidden="true">
      <div className={styles.column}>
        <span className={styles.head}>hands</span>
        <div className={styles.track}>
          {ticks.map((at) => (
            <span key={at} className={styles.time} style={{ insetBlockStart: `${top(at)}%` }}>
              {moments.time(at)}
            </span>
          ))}
          {picture.hands.map((each) => (
            <i
              key={each.id}
              className={styles.hand}
              style={stretch(each.fromSeconds, each.toSeconds)}
            />
          ))}
        </div>
      </div>
      {picture.bars.map((bar) => (
        <div key={bar.id} className={styles.column}>
          <span className={styles.head}>
            <BarHead bar={bar} levels={levels} />
          </span>
          <div className={styles.track}>
            <i className={styles.bar} style={stretch(bar.from, bar.to)} />
            {bar.off.map((each) => (
              <i
                key={each.fromSeconds}
                className={styles.off}
                style={stretch(each.fromSeconds, each.toSeconds)}
              >
                <b>◆</b>
              </i>
            ))}
            {bar.oven.map((each) => (
              <i
                key={each.fromSeconds}
                className={styles.oven}
                style={stretch(each.fromSeconds, each.toSeconds)}
              />
            ))}
            {bar.hands.map((each) => (
              <i
                key={`${each.fromSeconds} ${each.toSeconds}`}
                className={styles.hand}
                style={stretch(each.fromSeconds, each.toSeconds)}
              />
            ))}
          </div>
        </div>
      ))}
      <div className={styles.column}>
        <span className={styles.head}>oven</span>
        <div className={styles.track}>
          {picture.loads.map((load) => (
            <i
              key={load.number}
              className={styles.load}
              style={stretch(load.fromSeconds, load.toSeconds)}
            >
              {load.number}
            </i>
          ))}
        </div>
      </div>
    </div>
  )
}

function BarHead({ bar, levels }: { bar: DoughBar; levels: readonly Level[] }) {
  const known = bar.levelId !== null && levels.some(({ id }) => id === bar.levelId)
  if (!known || bar.levelId === null) return <span>dough {bar.dough}</span>
  return <LevelTab levels={levels} levelId={bar.levelId} size="small" />
}
