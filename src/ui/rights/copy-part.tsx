import type { ReactNode } from 'react'
import { aboutParts, type ChildCopy } from '#rights/child-copy'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'

type PartName = Exclude<keyof ChildCopy, 'format' | 'madeAt' | 'about' | 'club' | 'mentions'>

/** In the order they are read. */
const parts: readonly (readonly [name: PartName, title: string])[] = [
  ['child', 'The child'],
  ['squads', 'Squads'],
  ['guardians', 'Parents and carers'],
  ['keepsGoal', 'Goal, yes or no'],
  ['lines', 'Lines in matches'],
  ['agreements', 'Agreed with the family'],
  ['pairs', 'Apart or together'],
  ['register', 'Who was there'],
  ['turns', 'Turns'],
  ['passed', 'Was offered, passed'],
  ['spells', 'In matches'],
  ['attendance', 'Attendance, added up'],
  ['sums', 'Times, added up'],
  ['flags', 'Pointed out to the coach'],
  ['plans', 'Practices planned'],
  ['matchPlans', 'Matches planned'],
  ['pitch', 'Tapped at the pitch'],
  ['familyPages', 'Pages the family read'],
  ['familyNotes', 'Note for the family'],
  ['requests', 'Asked by the family'],
  ['consents', 'Agreed to'],
  ['links', 'Links for the family'],
  ['asGuest', 'As a guest'],
  ['record', 'Who changed it and who looked'],
]

/** Lines of one part shown on the page; the copy has them all. */
const mostLines = 200

/** All that is kept, part by part, each with what it means. */
export function CopyPart({ copy }: { readonly copy: ChildCopy }) {
  return (
    <section>
      <SectionTitle note="No birth date, address, sex or medical detail is kept anywhere.">
        All that is kept
      </SectionTitle>
      {parts.map(([name, title]) => (
        <Part key={name} title={title} about={aboutParts[name]} value={copy[name]} />
      ))}
    </section>
  )
}

type PartProps = {
  readonly title: string
  readonly about: string
  readonly value: object | readonly object[]
}

function Part({ title, about, value }: PartProps) {
  const rows: readonly object[] = Array.isArray(value) ? value : [value]
  const isList = Array.isArray(value)
  return (
    <Details
      summary={isList ? `${title}: ${rows.length === 0 ? 'nothing' : rows.length}` : title}
      isOpen={!isList}
    >
      <p className="mb-2 max-w-prose text-sm text-soft">{about}</p>
      {rows.length > 0 && isList ? <Rows title={title} rows={rows} /> : null}
      {isList ? null : <Lines of={value} />}
      {rows.length > mostLines ? (
        <p className="mt-2 text-sm text-soft">And {rows.length - mostLines} more. The copy has them all.</p>
      ) : null}
    </Details>
  )
}

function Rows({ title, rows }: { readonly title: string; readonly rows: readonly object[] }) {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className="relative overflow-x-auto" tabIndex={0} aria-label={title}>
      <table className="ruled text-sm">
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {spaced(column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.slice(0, mostLines).map((row, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: lines are told apart by their order alone
            <tr key={index}>
              {columns.map((column) => (
                <td key={column}>{shown((row as Readonly<Record<string, unknown>>)[column])}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function Lines({ of }: { readonly of: object }) {
  return (
    <dl className="grid max-w-prose grid-cols-[auto_1fr] gap-x-6 gap-y-1">
      {Object.entries(of).map(([key, value]) => (
        <div key={key} className="contents">
          <dt className="text-soft">{spaced(key)}</dt>
          <dd className="break-words">{shown(value)}</dd>
        </div>
      ))}
    </dl>
  )
}

/** `mayKeepGoal` → "may keep goal". */
function spaced(key: string): string {
  return key.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()
}

function shown(value: unknown): ReactNode {
  if (value === null || value === undefined || value === '') return '–'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'number') return Math.round(value * 10) / 10
  if (typeof value === 'string')
    return /^\d{4}-\d\d-\d\dT/.test(value) ? value.slice(0, 16).replace('T', ' ') : value
  if (Array.isArray(value) && value.length === 0) return '–'
  return <code className="block max-w-md text-xs break-words">{JSON.stringify(value)}</code>
}
