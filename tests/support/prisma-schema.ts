import { readFileSync } from 'node:fs'

export type SchemaColumn = {
  readonly name: string
  /** As PostgreSQL writes it. */
  readonly type: string
  readonly isNullable: boolean
  readonly hasDefault: boolean
}

export type SchemaTable = {
  readonly columns: readonly SchemaColumn[]
  readonly key: readonly string[]
  readonly uniques: readonly (readonly string[])[]
  readonly indexes: readonly (readonly string[])[]
  /** Own columns, the table they point at and its columns. */
  readonly references: readonly (readonly [string, string, string])[]
}

export type Schema = {
  readonly tables: Readonly<Record<string, SchemaTable>>
  readonly enums: Readonly<Record<string, readonly string[]>>
}

const scalarTypes: Readonly<Record<string, string>> = {
  String: 'text',
  Int: 'integer',
  Float: 'double precision',
  Boolean: 'boolean',
  Json: 'jsonb',
  Bytes: 'bytea',
  BigInt: 'bigint',
  DateTime: 'timestamp(3) without time zone',
}

const nativeTypes: Readonly<Record<string, string>> = {
  '@db.Uuid': 'uuid',
  '@db.Date': 'date',
  '@db.Timestamptz(3)': 'timestamp(3) with time zone',
  '@db.VarChar(255)': 'character varying(255)',
}

/**
 * The tables that prisma/schema.prisma asks for, read from its text: the little of Prisma's language that it uses.
 * The engine that would compare it with a database is not to be had on every machine.
 */
export function readPrismaSchema(file: string | URL): Schema {
  const text = readFileSync(file, 'utf8').replaceAll(/\/\/.*$/gm, '')
  const blocks = [...text.matchAll(/^(model|enum) (\w+) \{\n([\s\S]*?)^\}/gm)].map(
    ([, kind, name, body]) => ({
      kind,
      name: name as string,
      lines: (body as string).split('\n').flatMap((line) => line.trim() || []),
    }),
  )
  const enums = Object.fromEntries(
    blocks.filter(({ kind }) => kind === 'enum').map(({ name, lines }) => [name, lines]),
  )
  const models = blocks.filter(({ kind }) => kind === 'model')
  const modelNames = new Set(models.map(({ name }) => name))
  return {
    enums,
    tables: Object.fromEntries(
      models.map(({ name, lines }) => [name, readModel(lines, { modelNames, enums })]),
    ),
  }
}

function readModel(
  lines: readonly string[],
  { modelNames, enums }: { modelNames: ReadonlySet<string>; enums: Schema['enums'] },
): SchemaTable {
  const fields = lines.filter((line) => !line.startsWith('@@')).map(readField)
  const columns = fields
    .filter(({ type }) => !modelNames.has(type))
    .map(({ name, type, isNullable, isList, attributes }) => ({
      name,
      type:
        (Object.entries(nativeTypes).find(([native]) => attributes.includes(native))?.[1] ??
          typeOf(type, enums)) + (isList ? '[]' : ''),
      isNullable,
      hasDefault: attributes.includes('@default('),
    }))
  const listsOf = (attribute: string) =>
    lines.flatMap((line) => {
      const list = line.match(new RegExp(`^@@${attribute}\\(\\[([^\\]]*)\\]\\)$`))?.[1]
      return list === undefined ? [] : [names(list)]
    })
  const ownKey = fields.find(({ attributes }) => /@id\b/.test(attributes))
  return {
    columns,
    key: ownKey ? [ownKey.name] : (listsOf('id')[0] ?? []),
    uniques: [
      ...fields.flatMap(({ name, attributes }) => (/@unique\b/.test(attributes) ? [[name]] : [])),
      ...listsOf('unique'),
    ],
    indexes: listsOf('index'),
    references: fields.flatMap(({ type, attributes }) => {
      const [, own, theirs] = attributes.match(/fields: \[([^\]]*)\], references: \[([^\]]*)\]/) ?? []
      return own && theirs ? [[names(own).join(), type, names(theirs).join()] as const] : []
    }),
  }
}

function readField(line: string) {
  const [, name, type, mark, attributes] = line.match(/^(\w+)\s+(\w+)(\?|\[\])?\s*(.*)$/) ?? []
  if (!name || !type) throw new Error(`A line of the schema that is not understood: ${line}`)
  // A list may always be null to the database.
  const isList = mark === '[]'
  return { name, type, isNullable: mark === '?' || isList, isList, attributes: attributes ?? '' }
}

function typeOf(type: string, enums: Schema['enums']): string {
  const found = type in enums ? `"${type}"` : scalarTypes[type]
  if (!found) throw new Error(`A type of the schema that is not understood: ${type}`)
  return found
}

function names(list: string): string[] {
  return list.split(',').map((name) => name.trim())
}
