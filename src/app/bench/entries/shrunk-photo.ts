/** The longest side of a kept photo: enough for a crumb, small enough for a notebook of many trials. */
const longestSidePixels = 1600

export interface ShrunkPhoto {
  picture: Blob
  widthPixels: number
  heightPixels: number
}

/** Reads a picture file, turned the right way up, and shrinks it to JPEG. Rejects when the file is no picture. */
export async function shrunkPhoto(file: Blob): Promise<ShrunkPhoto> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' })
  const scale = Math.min(1, longestSidePixels / Math.max(bitmap.width, bitmap.height))
  const widthPixels = Math.max(1, Math.round(bitmap.width * scale))
  const heightPixels = Math.max(1, Math.round(bitmap.height * scale))
  const canvas = document.createElement('canvas')
  canvas.width = widthPixels
  canvas.height = heightPixels
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, widthPixels, heightPixels)
  bitmap.close()
  const picture = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', 0.85))
  if (!picture) throw new Error('the browser gave no picture back')
  return { picture, widthPixels, heightPixels }
}
