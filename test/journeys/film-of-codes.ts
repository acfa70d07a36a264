import { generate } from 'lean-qr'

const [width, height] = [640, 480]
/** Frames in a second, and how many a code is held before the camera: nearly a second, as a hand holds it. */
const [perSecond, held] = [10, 8]

/** A film of scan codes held before a camera one after another, as a browser's stand-in camera plays it over and over. */
export function filmOfCodes(texts: readonly string[]): Buffer {
  const colours = Buffer.alloc((width * height) / 2, 128)
  const frames = texts.flatMap((text) => {
    const frame = Buffer.concat([Buffer.from('FRAME\n'), greysOf(text), colours])
    return new Array<Buffer>(held).fill(frame)
  })
  const head = `YUV4MPEG2 W${width} H${height} F${perSecond}:1 Ip A1:1 C420jpeg\n`
  return Buffer.concat([Buffer.from(head), ...frames])
}

/** A white picture with the code in its middle, as large as it goes in whole pixels. */
function greysOf(text: string): Buffer {
  const code = generate(text)
  const pixels = Math.floor((height - 40) / (code.size + 8))
  const [left, top] = [width, height].map((side) => Math.floor((side - code.size * pixels) / 2))
  const greys = Buffer.alloc(width * height, 235)
  for (let y = 0; y < code.size * pixels; y += 1)
    for (let x = 0; x < code.size * pixels; x += 1)
      if (code.get(Math.floor(x / pixels), Math.floor(y / pixels)))
        greys[((top ?? 0) + y) * width + (left ?? 0) + x] = 16
  return greys
}
