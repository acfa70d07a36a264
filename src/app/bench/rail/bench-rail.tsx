import { useRef } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { levelLooks } from '@/app/kit/look/level-look.ts'
import { useWidth } from '@/app/kit/look/use-width.ts'
import tab from '@/app/kit/rail/level-tab.module.css'
import { shortClockText } from '@/app/kit/time/clock-text.ts'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import { levelAxis } from '@/core/figure/level-axis.ts'
import { levelShort } from '@/core/wording/words/level-text.ts'
import styles from './bench-rail.module.css'
import { type LineNow, tabState } from './line-now.ts'
import { tabPlaces } from './tab-places.ts'

interface BenchRailProps {
  lines: readonly LineNow[]
  /** The line in front. */
  frontKey: string | null
  /** The line on which something begins next. */
  nextKey: string | null
  onPick: (line: LineNow) => void
}

/**
 * The rail of the working day: a tab for each line, to scale where there is room, which is its clock with its state in a word; a
 * press brings it to the front. While the codes are kept the letters stand alone, evenly, in an order that tells nothing.
 */
export function BenchRail({ lines, frontKey, nextKey, onPick }: BenchRailProps) {
  const { plan, covered } = useBench()
  const strut = useRef<HTMLDivElement>(null)
  const railPixels = useWidth(strut, 328)
  const shown = covered
    ? lines.toSorted((one, other) => (one.letter < other.letter ? -1 : 1))
    : lines
  const axis = levelAxis(plan.levels)
  const at = new Map(axis.positions.map((position) => [position.levelId, position.at]))
  const places = tabPlaces(
    shown.map(({ levelId }, index) =>
      covered || levelId === null || !axis.ordered
        ? (index + 0.5) / shown.length
        : (at.get(levelId) ?? 0.5),
    ),
    railPixels,
  )
  const control = axis.positions.find((position) => position.control)
  return (
    <div className={`${styles.rail} ${covered ? styles.covered : ''}`}>
      <div ref={strut} />
      <nav aria-label={covered ? 'Doughs, letters only' : `Doughs: ${plan.factor.name}`}>
        <ol
          className={places ? styles.toScale : styles.rows}
          style={places ? { blockSize: places.heightPixels } : undefined}
        >
          {shown.map((line, index) => (
            <li
              key={line.key}
              style={
                places
                  ? {
                      insetInlineStart: places.lefts[index],
                      inlineSize: places.widthPixels,
                    }
                  : undefined
              }
            >
              <Tab
                line={line}
                front={line.key === frontKey}
                isNext={line.key === nextKey}
                onPick={() => onPick(line)}
              />
            </li>
          ))}
        </ol>
      </nav>
      {covered ? null : (
        <div className={styles.beam} aria-hidden="true">
          {axis.ticks.map(({ value, at: place }) => (
            <i key={value} style={{ insetInlineStart: `${place * 100}%` }} />
          ))}
          {control && axis.ordered ? (
            <span style={{ insetInlineStart: `clamp(1.5rem, ${control.at * 100}%, 100% - 2rem)` }}>
              ▲ usual
            </span>
          ) : null}
        </div>
      )}
    </div>
  )
}

interface TabProps {
  line: LineNow
  front: boolean
  isNext: boolean
  onPick: () => void
}

function Tab({ line, front, isNext, onPick }: TabProps) {
  const { plan, covered } = useBench()
  const look = line.levelId === null ? undefined : levelLooks(plan.levels).get(line.levelId)
  const level = plan.levels.find(({ id }) => id === line.levelId)
  const late = useShownOfClock(useServices().now, (now) => tabState(line, isNext, now).late)
  const bare = covered || !look
  return (
    <button
      type="button"
      className={[
        styles.tab,
        bare ? styles.bare : tab.tab,
        look?.pattern && !bare ? tab[look.pattern] : '',
        late ? styles.late : '',
      ].join(' ')}
      style={bare ? undefined : look?.style}
      aria-current={front ? 'true' : undefined}
      data-means={`to the front ${line.key}`}
      onClick={onPick}
    >
      <span className={styles.words}>
        <span className={styles.name}>
          <b>{line.letter}</b>
          {covered || !level ? null : ` ${levelShort(level)}`}
        </span>{' '}
        <TabClock line={line} isNext={isNext} />
      </span>
    </button>
  )
}

/** The clock of a line with its state in a word: of the whole tab only this changes from second to second. */
function TabClock({ line, isNext }: Pick<TabProps, 'line' | 'isNext'>) {
  const { now: clock } = useServices()
  const shown = useShownOfClock(clock, (now) => {
    const { seconds } = tabState(line, isNext, now)
    return seconds === null ? stepWord(line) : shortClockText(seconds)
  })
  const word = useShownOfClock(clock, (now) => tabState(line, isNext, now).word)
  return (
    <>
      <span className={styles.clock}>{shown}</span> <span className={styles.state}>{word}</span>
    </>
  )
}

/** What is to begin on a line that has no moment yet; of one that is through a stroke. */
const stepWord = ({ item }: LineNow) => item?.step.name.toLowerCase() ?? '–'
