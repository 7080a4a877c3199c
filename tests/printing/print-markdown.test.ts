import { describe, expect, it } from 'vitest'
import { printMarkdown } from '../../src/printing/index.js'
import { escaped } from '../../src/printing/sheet-markdown.js'
import { finding, sample } from './sample-report.js'

describe('Markdown', () => {
  it('is as it was read and approved', async () => {
    await expect(printMarkdown(sample)).toMatchFileSnapshot('snapshots/sample.md')
  })

  it('never loses a caution', () => {
    for (const { caution = '' } of sample.findings) expect(printMarkdown(sample)).toContain(`- **CAUTION** ${caution}`)
  })

  it('keeps what the document says from becoming markup', () => {
    const name = '# <script>alert(1)</script> [x](http://example.test) `a` | b'
    const printed = printMarkdown({ ...sample, name, findings: [{ ...finding, message: '1. first\n- second' }] })
    expect(printed).toContain('# \\# \\<script\\>alert(1)\\</script\\> \\[x\\](http://example.test) \\`a\\` \\| b\n')
    expect(printed).toContain('\n\n1\\. first - second\n')
  })

  it.each([
    ['- a', '\\- a'],
    ['+ a', '\\+ a'],
    ['=== a', '\\=== a'],
    ['2) a', '2\\) a'],
    ['&lt;b&gt;', '&amp;lt;b&amp;gt;'],
    ['a_b*c~d', 'a\\_b\\*c\\~d'],
    ['3.5 in', '3\\.5 in'],
  ])('escapes %j', (text, expected) => {
    expect(escaped(text)).toBe(expected)
  })
})
