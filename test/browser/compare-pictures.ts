import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { PNG } from 'pngjs'

/** How a picture that was taken stands to the one that was accepted last. */
export interface PictureFault {
  name: string
  /** `missing`: it was accepted once and is not taken any more; `new`: it was never accepted. */
  is: 'changed' | 'missing' | 'new'
  /** Share of the pixels that differ, 0 to 1; of a picture of another size 1. */
  share: number
}

/** A channel may differ by so much, of 255, without counting: letters are drawn a little otherwise on another machine. */
const channelTolerance = 24
/** So small a share of the pixels may differ: a cursor, a rounded corner. */
const shareTolerance = 0.0005

const pictures = (folder: string) =>
  existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.png')) : []

/**
 * Compares the pictures in `taken` with those `accepted`, and lays every changed one beside the old (left the accepted, right
 * the taken one) into `beside`, which is emptied first.
 */
export function comparePictures(taken: string, accepted: string, beside: string): PictureFault[] {
  rmSync(beside, { recursive: true, force: true })
  const now = new Set(pictures(taken))
  const before = new Set(pictures(accepted))
  const missing = [...before].filter((name) => !now.has(name))
  return [
    ...missing.map((name): PictureFault => ({ name, is: 'missing', share: 1 })),
    ...[...now].flatMap((name): PictureFault[] => {
      if (!before.has(name)) return [{ name, is: 'new', share: 1 }]
      const old = PNG.sync.read(readFileSync(join(accepted, name)))
      const fresh = PNG.sync.read(readFileSync(join(taken, name)))
      const share = shareChanged(old, fresh)
      if (share <= shareTolerance) return []
      mkdirSync(beside, { recursive: true })
      writeFileSync(join(beside, name), PNG.sync.write(sideBySide(old, fresh)))
      return [{ name, is: 'changed', share }]
    }),
  ].toSorted((one, other) => (one.name < other.name ? -1 : 1))
}

function shareChanged(old: PNG, fresh: PNG): number {
  if (old.width !== fresh.width || old.height !== fresh.height) return 1
  let changed = 0
  for (let at = 0; at < old.data.length; at += 4) {
    const off = Math.max(
      ...[0, 1, 2, 3].map((channel) =>
        Math.abs((old.data[at + channel] ?? 0) - (fresh.data[at + channel] ?? 0)),
      ),
    )
    if (off > channelTolerance) changed += 1
  }
  return changed / (old.width * old.height)
}

function sideBySide(old: PNG, fresh: PNG): PNG {
  const both = new PNG({
    width: old.width + fresh.width,
    height: Math.max(old.height, fresh.height),
  })
  PNG.bitblt(old, both, 0, 0, old.width, old.height, 0, 0)
  PNG.bitblt(fresh, both, 0, 0, fresh.width, fresh.height, old.width, 0)
  return both
}

/** What is said of the faults, a line each, with what to do. */
export function pictureFaultsText(faults: readonly PictureFault[], beside: string): string {
  const line = ({ name, is, share }: PictureFault) => {
    if (is === 'missing') return `${name} is missing: it was accepted and is not taken any more`
    if (is === 'new') return `${name} is new`
    return `${name} has changed in ${(share * 100).toFixed(2)} % of its pixels: old and new in ${join(beside, name)}`
  }
  return [
    ...faults.map(line),
    'Look at them; what is right is accepted by `npm run pictures -- --accept`.',
  ].join('\n')
}
