import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'
import { plainComment } from './generate-comments.js'

/** What kinds, families and their facts mean: by kind, then by fact; under the empty name the kind itself. */
export type CollectedMeanings = Readonly<Record<string, Readonly<Record<string, string>>>>

const folders = ['model/singletons', 'model/kinds', 'checks', 'checks/hydraulics']
const files = ['model/families.ts', 'model/every-thing.ts']

/** Collects the doc comments of the field table and of derived facts: they are the meanings that people read. */
export function collectMeanings(source: string): CollectedMeanings {
  const paths = [...files, ...folders.flatMap((folder) => filesIn(source, folder))]
  const parsed = paths.map((path) =>
    ts.createSourceFile(path, readFileSync(join(source, path), 'utf8'), ts.ScriptTarget.ES2022, true),
  )
  const statements = parsed.flatMap((file) => [...file.statements])
  const declared = statements.flatMap(declarationsIn)
  const names = new Map(declared.flatMap((one) => (one.of === undefined ? [[one.constant, one.name] as const] : [])))
  const found = new Map<string, Map<string, string>>()
  const note = (of: string, fact: string, meaning: string | undefined): void => {
    const facts = found.get(of) ?? new Map<string, string>()
    if (meaning !== undefined && !facts.has(fact)) facts.set(fact, meaning)
    found.set(of, facts)
  }
  for (const one of declared.filter(({ of }) => of === undefined)) {
    note(one.name, '', one.meaning)
    for (const [fact, meaning] of one.fields) note(one.name, fact, meaning)
  }
  for (const { of, fact, meaning } of statements.flatMap(answersIn)) note(names.get(of) ?? of, fact, meaning)
  for (const one of declared) if (one.of !== undefined) note(names.get(one.of) ?? one.of, one.name, one.meaning)
  return sorted(found)
}

function filesIn(source: string, folder: string): readonly string[] {
  return readdirSync(join(source, folder))
    .filter((name) => name.endsWith('.ts'))
    .toSorted()
    .map((name) => `${folder}/${name}`)
}

interface Declared {
  readonly constant: string
  readonly name: string
  readonly meaning: string | undefined
  readonly fields: readonly (readonly [string, string | undefined])[]
  /** The constant of the kind that a derived fact is about. */
  readonly of?: string
}

const makers = ['kind', 'family', 'fact', 'defineCheck', 'sizedFact']
const shared: Readonly<Record<string, string>> = { everyComponent: 'components', everyLine: 'lines' }

function declarationsIn(statement: ts.Statement): readonly Declared[] {
  if (!ts.isVariableStatement(statement)) return []
  return statement.declarationList.declarations.flatMap((declaration) => declaredBy(declaration) ?? [])
}

function declaredBy(declaration: ts.VariableDeclaration): Declared | undefined {
  const constant = declaration.name.getText()
  const made = bare(declaration.initializer)
  const meaning = plainComment(declaration)
  const section = shared[constant]
  if (section !== undefined && made !== undefined)
    return { constant, name: section, meaning, fields: fieldsOf(made, '') }
  if (made === undefined || !ts.isCallExpression(made) || !makers.includes(made.expression.getText())) return undefined
  const [name, words] = made.arguments
  if (name === undefined || words === undefined || !ts.isStringLiteral(name) || !ts.isObjectLiteralExpression(words))
    return undefined
  const of = propertyOf(words, 'of')?.getText()
  const fields = propertyOf(words, 'fields')
  return {
    constant,
    name: name.text,
    meaning,
    fields: fields === undefined ? [] : fieldsOf(fields, ''),
    ...(of === undefined ? {} : { of }),
  }
}

function propertyOf(words: ts.ObjectLiteralExpression, name: string): ts.Expression | undefined {
  const found = words.properties.find((property) => property.name?.getText() === name)
  return found !== undefined && ts.isPropertyAssignment(found) ? found.initializer : undefined
}

/** Fields in order; members of a group under their full names. */
function fieldsOf(expression: ts.Expression, prefix: string): readonly (readonly [string, string | undefined])[] {
  const object = bare(expression)
  if (object === undefined || !ts.isObjectLiteralExpression(object)) return []
  return object.properties.filter(ts.isPropertyAssignment).flatMap((property) => {
    const name = `${prefix}${property.name.getText()}`
    const made = bare(property.initializer)
    const isGroup = made !== undefined && ts.isCallExpression(made) && made.expression.getText() === 'group'
    const inner = isGroup && made.arguments[0] !== undefined ? fieldsOf(made.arguments[0], `${name}.`) : []
    return [[name, plainComment(property)] as const, ...inner]
  })
}

function bare(expression: ts.Expression | undefined): ts.Expression | undefined {
  return expression !== undefined && ts.isSatisfiesExpression(expression) ? expression.expression : expression
}

/** Answers that a document may state, from the written type: `interface BoilerWritten extends WrittenOf<typeof boiler>`. */
function answersIn(
  statement: ts.Statement,
): readonly { readonly of: string; readonly fact: string; readonly meaning: string | undefined }[] {
  if (!ts.isInterfaceDeclaration(statement)) return []
  const of = /typeof (\w+)/.exec(statement.heritageClauses?.[0]?.getText() ?? '')?.[1]
  if (of === undefined) return []
  return statement.members
    .filter(ts.isPropertySignature)
    .map((member) => ({ of, fact: member.name.getText(), meaning: plainComment(member) }))
}

function sorted(found: ReadonlyMap<string, ReadonlyMap<string, string>>): CollectedMeanings {
  return Object.fromEntries(
    [...found].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([of, facts]) => [of, Object.fromEntries(facts)]),
  )
}
