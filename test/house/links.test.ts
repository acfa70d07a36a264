import { existsSync, readFileSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { projectFiles } from './project-files.ts'

const root = new URL('../..', import.meta.url).pathname
const pages = projectFiles().filter((path) => path.endsWith('.md') && existsSync(join(root, path)))

/** A heading's anchor: lower case, punctuation dropped, spaces to hyphens. */
const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/[`*_]/g, '')
    .replace(/[^\p{L}\p{N} -]/gu, '')
    .trim()
    .replace(/ /g, '-')

const anchorsOf = (text: string) =>
  [...text.matchAll(/^#{1,6} (.+)$/gm)].map((match) => anchorOf(match[1] ?? ''))

const linksOf = (text: string) =>
  [...text.replace(/```[\s\S]*?```/g, '').matchAll(/\]\(([^)\s]+)\)/g)].map(
    (match) => match[1] ?? '',
  )

/** Why a link leads nowhere, or undefined when it arrives. */
function deadLink(page: string, text: string, link: string): string | undefined {
  if (/^(https?:|mailto:)/.test(link)) return undefined
  const [path = '', anchor] = link.split('#')
  const target = path === '' ? join(root, page) : join(root, dirname(page), decodeURI(path))
  if (!existsSync(target)) return `${link}: no such file`
  if (anchor === undefined || statSync(target).isDirectory()) return undefined
  const targetText = path === '' ? text : readFileSync(target, 'utf8')
  return anchorsOf(targetText).includes(anchor) ? undefined : `${link}: no such heading`
}

describe('links in the documentation', () => {
  test.each(pages)('%s has no dead link', (page) => {
    const text = readFileSync(join(root, page), 'utf8')
    expect(linksOf(text).flatMap((link) => deadLink(page, text, link) ?? [])).toEqual([])
  })

  test('a missing file and a missing heading are noticed', () => {
    expect(deadLink('README.md', '# Here', 'nowhere.md')).toContain('no such file')
    expect(deadLink('README.md', '# Here', '#there')).toContain('no such heading')
    expect(deadLink('README.md', '# Here', '#here')).toBeUndefined()
  })
})
