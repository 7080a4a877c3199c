import type { Finding } from '../findings/index.js'
import { tellSpoken } from './demanded-by.js'
import { cautionRow, exemptionRows, headOf, missingText, row } from './finding-item.js'
import type { Item, Row } from './sheet.js'

/** Undecided findings, shorter: what is missing. Things of which one rule cannot tell the same are told together. */
export function openItems(findings: readonly Finding[]): readonly Item[] {
  const alike = new Map<string, Finding[]>()
  for (const finding of findings) {
    const key = `${finding.severity} ${finding.say.key} ${finding.caution ?? ''} ${exemptionRows(finding)
      .map((one) => one.text)
      .join()}`
    alike.set(key, [...(alike.get(key) ?? []), finding])
  }
  return [...alike.values()].map(openItem)
}

function openItem(findings: readonly Finding[]): Item {
  const [first] = findings
  if (first === undefined) return { rows: [] }
  const spoke = first.demands.find((demand) => demand.spoke)
  const rows: readonly (Row | undefined)[] = [
    row('Missing', missingText(findings)),
    row('Asked', spoke && tellSpoken(spoke, first)),
    ...exemptionRows(first),
    cautionRow(first.caution),
  ]
  const text = findings.length === 1 ? first.message : `Cannot be told: ${lowered(first.title)}.`
  return { head: headOf(findings), aside: first.rule, text, rows: rows.filter((one) => one !== undefined) }
}

function lowered(title: string): string {
  return `${title.charAt(0).toLowerCase()}${title.slice(1)}`
}
