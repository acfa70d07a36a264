import { useEffect, useState } from 'react'
import styles from './scan-code.module.css'
import { useThrown } from './use-thrown.ts'

/** The most characters of an address, and digits of a return, that a phone an arm away still reads from a screen. */
export const mostScannable = { address: 440, digits: 650 } as const

/** A scan code, always dark on white, with the margin its readers need. Its maker is fetched when the first is shown. */
export function ScanCode({ text, label }: { text: string; label: string }) {
  const [path, setPath] = useState<{ side: number; d: string } | null>(null)
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
  return (
    <div className={styles.code} role="img" aria-label={label} data-scan={path ? 'ready' : 'waits'}>
      {path ? (
        <svg viewBox={`0 0 ${path.side} ${path.side}`} shapeRendering="crispEdges" aria-hidden>
          <rect width={path.side} height={path.side} fill="#ffffff" />
          <path d={path.d} fill="#000000" />
        </svg>
      ) : null}
    </div>
  )
}

function modulesOf(code: { size: number; get: (x: number, y: number) => boolean }): string {
  const rows = Array.from({ length: code.size }, (_, y) => y)
  return rows
    .flatMap((y) => rows.flatMap((x) => (code.get(x, y) ? [`M${x + 4} ${y + 4}h1v1h-1z`] : [])))
    .join('')
}
