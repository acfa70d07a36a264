import { expect, test } from 'vitest'
import { escapeHtml, escapeMarkdown } from '@/core/report/escape.ts'

test('the five signs that HTML reads become entities', () => {
  expect(escapeHtml(`<script>alert("a" & 'b')</script>`)).toBe(
    '&lt;script&gt;alert(&quot;a&quot; &amp; &#39;b&#39;)&lt;/script&gt;',
  )
})

test('characters that no document may hold are taken out', () => {
  expect(escapeHtml('a\u0000b\u001fc\td')).toBe('abc\td')
})

test('Markdown reads a typed text as text', () => {
  expect(escapeMarkdown('# a|b\n[x](y) *c*')).toBe('\\# a\\|b \\[x\\](y) \\*c\\*')
  expect(escapeMarkdown('1. first')).toBe('1\\. first')
  expect(escapeMarkdown('- item')).toBe('\\- item')
  expect(escapeMarkdown('<img src=x>')).toBe('&lt;img src=x&gt;')
  expect(escapeMarkdown('https://a.example')).toBe('https\\://a.example')
})
