import { Transform, type TransformCallback } from 'node:stream'

/** What one connection may send: a first rush, as after hours without a network, then a steady stream. */
export const sends = { rushBytes: 2_000_000, bytesPerSecond: 256_000 }

/** Lets bytes through no faster than allowed; whoever sends faster waits, and loses nothing. */
export class Slowed extends Transform {
  private readonly most: typeof sends
  private left: number
  private since = performance.now()

  constructor(most = sends) {
    super()
    this.most = most
    this.left = most.rushBytes
  }

  override _transform(piece: Buffer, _: BufferEncoding, done: TransformCallback): void {
    const { rushBytes, bytesPerSecond } = this.most
    const now = performance.now()
    this.left = Math.min(rushBytes, this.left + ((now - this.since) / 1000) * bytesPerSecond)
    this.since = now
    this.left -= piece.length
    if (this.left >= 0) done(null, piece)
    else setTimeout(() => done(null, piece), (-this.left / bytesPerSecond) * 1000)
  }
}
