import { printProblem } from '../model/index.js'
import { differencesOf, settle } from './generate-differences.js'
import { generateFiles } from './generate-files.js'
import { packageFolder } from './package-folder.js'

// Writes everything that is generated; with --check tells what would change and writes nothing.
process.exitCode = generate(packageFolder(), process.argv.includes('--check'))

function generate(root: string, checkOnly: boolean): number {
  const generated = generateFiles(root)
  if (!generated.ok) return tell([...generated.problems.map(printProblem), 'Nothing was written.'], 1)
  const differences = differencesOf(root, generated.files)
  if (!checkOnly) settle(root, differences)
  if (differences.length === 0) return tell([`All ${generated.files.size} generated files are up to date.`], 0)
  const paths = differences.map(({ path, text }) => `${path}${text === undefined ? ' (should not be there)' : ''}`)
  if (!checkOnly) return tell([`Written: ${paths.join(', ')}`], 0)
  return tell(
    ['These generated files are not up to date; run "npm run generate":', ...paths.map((path) => `  ${path}`)],
    1,
  )
}

function tell(lines: readonly string[], code: number): number {
  const stream = code === 0 ? process.stdout : process.stderr
  stream.write(`${lines.join('\n')}\n`)
  return code
}
