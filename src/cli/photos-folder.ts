import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Photo, pictureFile } from '@/core/session/photo-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { CommandTrouble } from './trouble.ts'
import type { VerbOption } from './verb.ts'

/** The folder of pictures, as a verb is asked for it. */
export const photosOption: VerbOption = {
  type: 'string',
  value: 'FOLDER',
  help: 'the pictures of the trial: the folder photos of an archive, or pictures of a backup',
}

/** The pictures of a trial that stand in a folder, by the id of their photo. Without a folder none; a folder that is not there is refused. */
export function picturesIn(
  folder: string | undefined,
  { photos }: Pick<WholeTrial, 'photos'>,
): Map<string, { photo: Photo; bytes: Uint8Array }> {
  if (folder === undefined) return new Map()
  if (!existsSync(folder))
    throw new CommandTrouble(
      `--photos ${folder}: there is no such folder; name the one with the pictures.`,
    )
  return new Map(
    photos.flatMap((photo) => {
      const file = join(folder, pictureFile(photo))
      return existsSync(file) ? [[photo.id, { photo, bytes: readFileSync(file) }] as const] : []
    }),
  )
}

/** The same as `data:` addresses, as a report takes them. */
export function asAddresses(pictures: ReturnType<typeof picturesIn>): Map<string, string> {
  return new Map(
    [...pictures].map(([id, { photo, bytes }]) => [
      id,
      `data:${photo.mediaType};base64,${Buffer.from(bytes).toString('base64')}`,
    ]),
  )
}
