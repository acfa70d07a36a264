import * as z from 'zod/mini'
import { atShape, idShape } from '@/core/record/id-and-stamp.ts'

/** A photo by reference: the picture itself stays in the notebook and travels in a backup, not in a trial file. */
export const photoShape = z.strictObject({
  id: idShape,
  trialId: idShape,
  at: atShape,
  mediaType: z.enum(['image/jpeg', 'image/png', 'image/webp']),
  widthPixels: z.number().check(z.int(), z.gt(0)),
  heightPixels: z.number().check(z.int(), z.gt(0)),
})
export type Photo = z.infer<typeof photoShape>

const pictureEndings = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp' } as const

/** What a photo's picture is called where it is a file of its own: in a backup and in an archive. */
export const pictureFile = ({ id, mediaType }: Pick<Photo, 'id' | 'mediaType'>): string =>
  `${id}.${pictureEndings[mediaType]}`
