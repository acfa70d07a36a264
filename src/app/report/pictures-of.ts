import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Notebook } from '@/notebook/notebook.ts'

/** A trial's pictures as `data:` addresses by the id of their photo, for a file that needs nothing else; those that are not here are left out. */
export async function picturesOf(
  notebook: Pick<Notebook, 'picture'>,
  { photos }: Pick<WholeTrial, 'photos'>,
): Promise<Map<string, string>> {
  const pictures = new Map<string, string>()
  for (const { id } of photos) {
    const picture = await notebook.picture(id)
    if (picture) pictures.set(id, await dataAddress(picture))
  }
  return pictures
}

function dataAddress(picture: Blob): Promise<string> {
  return new Promise((done, failed) => {
    const reader = new FileReader()
    reader.onload = () => done(String(reader.result))
    reader.onerror = () => failed(reader.error)
    reader.readAsDataURL(picture)
  })
}
