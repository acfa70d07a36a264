import * as z from 'zod/mini'

const licenceListShape = z.array(
  z.object({
    name: z.string(),
    version: z.string(),
    identifier: z.optional(z.string()),
    text: z.optional(z.string()),
  }),
)
export type Licence = z.infer<typeof licenceListShape>[number]

/** The dependencies' licences that the build wrote beside the page. */
export async function readLicences(): Promise<Licence[]> {
  const answer = await fetch('licences/dependencies.json')
  if (!answer.ok) throw new Error(`The answer was ${answer.status}.`)
  return licenceListShape.parse(await answer.json())
}
