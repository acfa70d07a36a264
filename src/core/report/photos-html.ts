import { escapeHtml } from './escape.ts'
import type { PhotosBlock } from './report-block.ts'

/** Pictures as `data:` addresses, by the id of their photo. */
export type Pictures = ReadonlyMap<string, string>

/** One moment's photos side by side; a picture that was not handed in is said to be elsewhere. */
export function photosHtml(block: PhotosBlock, pictures: Pictures): string {
  const { title, scale, bar, columns } = block
  const cells = columns.map(
    ({ name, photos }) =>
      `<div><p class="of">${escapeHtml(name)}</p>${photos.map((photo) => photoHtml(photo, pictures)).join('')}</div>`,
  )
  const ruler = bar
    ? `<div><div class="bar" style="width:${percent(bar.share)}">${escapeHtml(bar.text)}</div></div>`
    : ''
  return `<figure><figcaption>${escapeHtml(title)}. ${escapeHtml(scale)}</figcaption><div class="wide"><div class="beside" style="grid-template-columns:repeat(${columns.length},minmax(9rem,1fr))">${cells.join('')}${ruler}</div></div></figure>`
}

function photoHtml(
  { photoId, share, text, alt }: PhotosBlock['columns'][number]['photos'][number],
  pictures: Pictures,
): string {
  const address = pictures.get(photoId)
  const picture =
    address === undefined
      ? '<span class="elsewhere">The picture is not in this file.</span>'
      : `<img src="${escapeHtml(address)}" alt="${escapeHtml(alt)}" style="width:${percent(share ?? 1)}">`
  return `<p class="shot">${picture}<span class="says">${escapeHtml(text)}</span></p>`
}

const percent = (share: number) => `${Math.round(share * 1000) / 10}%`
