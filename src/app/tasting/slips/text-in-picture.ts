import decodeQR from 'qr/decode.js'

type Picture = { width: number; height: number; data: Uint8ClampedArray }

const canvas = document.createElement('canvas')

function pixelsOf(
  source: CanvasImageSource,
  from: { x: number; y: number; width: number; height: number },
  scale: number,
): Picture | null {
  canvas.width = Math.round(from.width * scale)
  canvas.height = Math.round(from.height * scale)
  const context = canvas.getContext('2d', { willReadFrequently: true })
  if (!context || canvas.width === 0 || canvas.height === 0) return null
  context.drawImage(
    source,
    from.x,
    from.y,
    from.width,
    from.height,
    0,
    0,
    canvas.width,
    canvas.height,
  )
  return context.getImageData(0, 0, canvas.width, canvas.height)
}

/** Greys stretched from their 2nd to their 98th hundredth, so that a dim or pale code reads. */
function stretched({ width, height, data }: Picture): Picture {
  const greys = new Uint8Array(width * height)
  const counts = new Uint32Array(256)
  for (let at = 0; at < greys.length; at += 1) {
    const grey =
      ((data[at * 4] ?? 0) * 299 + (data[at * 4 + 1] ?? 0) * 587 + (data[at * 4 + 2] ?? 0) * 114) /
      1000
    greys[at] = grey
    counts[Math.round(grey)] = (counts[Math.round(grey)] ?? 0) + 1
  }
  const [low, high] = [limitOf(counts, greys.length * 0.02), limitOf(counts, greys.length * 0.98)]
  const out = new Uint8ClampedArray(data.length)
  for (let at = 0; at < greys.length; at += 1) {
    const grey = (((greys[at] ?? 0) - low) / Math.max(1, high - low)) * 255
    out.fill(grey, at * 4, at * 4 + 3)
    out[at * 4 + 3] = 255
  }
  return { width, height, data: out }
}

function limitOf(counts: Uint32Array, share: number): number {
  let sum = 0
  return counts.findIndex((count) => {
    sum += count
    return sum >= share
  })
}

function decoded(picture: Picture | null): string | null {
  if (!picture) return null
  try {
    return decodeQR(picture)
  } catch {
    // No code in this picture: the next one is looked at.
    return null
  }
}

/** The longer side to which a picture is brought for its last try: the modules of a code that fills it have some ten pixels. */
const lastTryPixels = 1000

/**
 * The text of a scan code in a picture; null where none is found. The picture as it is; its middle square twice as large with
 * its greys stretched; then the whole of it, brought to one size, stretched too: a large photo whose grain is smoothed so, or a
 * small one whose code stands at its edge.
 */
export function textInPicture(
  source: CanvasImageSource,
  width: number,
  height: number,
): string | null {
  if (width === 0 || height === 0) return null
  const whole = decoded(pixelsOf(source, { x: 0, y: 0, width, height }, 1))
  if (whole !== null) return whole
  const side = Math.min(width, height)
  const middle = { x: (width - side) / 2, y: (height - side) / 2, width: side, height: side }
  const picture = pixelsOf(source, middle, side < 1000 ? 2 : 1)
  const inTheMiddle = decoded(picture && stretched(picture))
  if (inTheMiddle !== null) return inTheMiddle
  const all = pixelsOf(
    source,
    { x: 0, y: 0, width, height },
    lastTryPixels / Math.max(width, height),
  )
  return decoded(all && stretched(all))
}
