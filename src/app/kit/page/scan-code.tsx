import { useEffect, useRef, useState } from 'react'
import styles from './scan-code.module.css'
import { useThrown } from './use-thrown.ts'
import { codeWidth } from './whole-modules.ts'

/** The most characters of an address, and digits of a return, that a phone an arm away still reads from a screen. */
export const mostScannable = { address: 440, digits: 650 } as const

/**
 * A scan code, always dark on white, with the margin its readers need and every module of the same size. Its maker is fetched
 * when the first is shown.
 */
export function ScanCode({ text, label }: { text: string; label: string }) {
  const [path, setPath] = useState<{ side: number; d: string } | null>(null)
  const { place, room } = useRoom()
  const watch = useThrown()
  useEffect(() => {
    let gone = false
    const draw = async () => {
      const { correction, generate } = await import('lean-qr')
      const digits = /^[0-9]+$/.test(text)
      const code = generate(text, {
        minCorrectionLevel: digits ? correction.M : correction.L,
      })
      if (!gone) setPath({ side: code.size + 8, d: modulesOf(code) })
    }
    watch(draw())
    return () => {
      gone = true
    }
  }, [text, watch])
  const width = path && room ? codeWidth(room.pixels, path.side, room.pixelRatio) : 0
  return (
    <div className={styles.room}>
      <div ref={place} />
      <div
        className={styles.code}
        role="img"
        aria-label={label}
        data-scan={width > 0 ? 'ready' : 'waits'}
      >
        {path && width > 0 ? (
          <svg
            width={width}
            height={width}
            viewBox={`0 0 ${path.side} ${path.side}`}
            shapeRendering="crispEdges"
            aria-hidden
          >
            <rect width={path.side} height={path.side} fill="#ffffff" />
            <path d={path.d} fill="#000000" />
          </svg>
        ) : null}
      </div>
    </div>
  )
}

/** The room there is for a code within its frame, and how many pixels of the screen stand on one of CSS; both may change. */
function useRoom() {
  const place = useRef<HTMLDivElement>(null)
  const [room, setRoom] = useState<{ pixels: number; pixelRatio: number } | null>(null)
  useEffect(() => {
    const element = place.current
    if (!element) return
    const measure = () =>
      setRoom({
        pixels: element.getBoundingClientRect().width,
        pixelRatio: window.devicePixelRatio,
      })
    const watcher = new ResizeObserver(measure)
    watcher.observe(element)
    // A page that is made larger or smaller changes the pixels under it, not the room.
    window.addEventListener('resize', measure)
    return () => {
      watcher.disconnect()
      window.removeEventListener('resize', measure)
    }
  }, [])
  return { place, room }
}

function modulesOf(code: { size: number; get: (x: number, y: number) => boolean }): string {
  const rows = Array.from({ length: code.size }, (_, y) => y)
  return rows
    .flatMap((y) => rows.flatMap((x) => (code.get(x, y) ? [`M${x + 4} ${y + 4}h1v1h-1z`] : [])))
    .join('')
}
