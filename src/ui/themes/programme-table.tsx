import type { ThemeCoverage } from '#themes/coverage'
import { Table } from '#ui/page/table'
import { words } from '#ui/words'

export type ProgrammeRow = {
  readonly theme: { readonly id: string; readonly name: string; readonly asks: string }
  readonly depth: number
  readonly coverage: ThemeCoverage | null
  /** Not planned itself, but themes under it are. */
  readonly isHeading: boolean
}

const percent = (part: number) => `${Math.round(part * 100)} %`

/** The planned part of a term's practices against what was met so far. */
export function ProgrammeTable({
  rows,
  practices,
}: {
  readonly rows: readonly ProgrammeRow[]
  /** Written so far. */
  readonly practices: number
}) {
  return (
    <Table
      caption="Planned and met"
      hideCaption
      head={[
        { key: 'theme', label: 'Theme' },
        { key: 'say', label: 'So far' },
        { key: 'planned', label: 'Planned', isFigure: true },
        { key: 'met', label: 'Met', isFigure: true },
        { key: 'due', label: 'Practices due', isFigure: true },
        { key: 'had', label: 'Practices met in', isFigure: true },
      ]}
    >
      {rows.map(({ theme, depth, coverage, isHeading }) => (
        <tr key={theme.id}>
          <th scope="row" className="sm:min-w-40">
            <span style={{ paddingLeft: `${depth * 1.25}rem` }} className="block">
              {theme.name}
              {theme.asks ? (
                <span className="block text-sm font-normal text-soft max-sm:hidden">{theme.asks}</span>
              ) : null}
            </span>
          </th>
          <td className={isBehind(coverage) ? 'font-semibold text-accent' : 'text-soft'}>
            {isHeading ? 'planned in its parts' : courseText(coverage)}
          </td>
          <td className="figure">
            {coverage && coverage.wishedShare > 0 ? percent(coverage.wishedShare) : '–'}
          </td>
          <td className="figure">
            {coverage && practices > 0 ? percent(coverage.metPractices / practices) : '–'}
          </td>
          <td className="figure">{coverage && coverage.wishedShare > 0 ? coverage.duePractices : '–'}</td>
          <td className="figure">{coverage ? coverage.metPractices : '–'}</td>
        </tr>
      ))}
    </Table>
  )
}

function isBehind(coverage: ThemeCoverage | null): boolean {
  return coverage !== null && coverage.metPractices < coverage.duePractices
}

/** "2 practices behind", "on course", "not in the plan". */
export function courseText(coverage: ThemeCoverage | null): string {
  if (!coverage) return 'not in the plan'
  if (coverage.wishedShare === 0) return 'met beside the plan'
  const behind = coverage.duePractices - coverage.metPractices
  if (behind <= 0) return 'on course'
  return coverage.metPractices === 0 ? 'never met' : `${words.practices(behind)} behind`
}
