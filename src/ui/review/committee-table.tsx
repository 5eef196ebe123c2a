import { type CommitteeRow, type GuardedCount, type GuardedPart, smallestGroup } from '#fairness/committee'
import { Table } from '#ui/page/table'
import { indexText } from '#ui/review/indices-part'
import { words } from '#ui/words'

export type CommitteeSquad = {
  readonly squad: { readonly id: string; readonly name: string }
  readonly rows: readonly { readonly kind: 'practice' | 'match'; readonly row: CommitteeRow }[]
}

type CommitteeTableProps = { readonly caption: string; readonly squads: readonly CommitteeSquad[] }

/** The term as a committee may have it: no child's name, groups under five hidden. */
export function CommitteeTable({ caption, squads }: CommitteeTableProps) {
  return (
    <div className="text-sm">
      <Table
        caption={caption}
        hideCaption
        head={[
          { key: 'squad', label: 'Squad' },
          { key: 'written', label: 'Written down' },
          { key: 'planned', label: 'As planned', isFigure: true },
          { key: 'band', label: 'Within the band' },
          { key: 'open', label: 'Flags open' },
          { key: 'answered', label: 'Answered' },
          { key: 'jain', label: 'Jain', isFigure: true },
          { key: 'gini', label: 'Gini', isFigure: true },
        ]}
      >
        {squads.flatMap(({ squad, rows }) =>
          rows.map(({ kind, row }) => (
            <tr key={`${squad.id} ${kind}`}>
              <th scope="row">
                {squad.name}, {words.kinds[kind].toLowerCase()}
              </th>
              <td className="whitespace-nowrap">
                {row.written.written} of {row.written.held}
              </td>
              <td className="figure">{row.written.asPlanned}</td>
              {row.said ? (
                <>
                  <td>{partText(row.said.withinBand)}</td>
                  <td className="whitespace-nowrap">{countText(row.said.flagsOpen)}</td>
                  <td className="whitespace-nowrap">{countText(row.said.flagsAnswered)}</td>
                  <td className="figure">{indexText(row.said.jainPlayed)}</td>
                  <td className="figure">{indexText(row.said.giniPlayed)}</td>
                </>
              ) : (
                <td colSpan={5}>{words.notEnoughWritten}</td>
              )}
            </tr>
          )),
        )}
      </Table>
    </div>
  )
}

/** One to four could point at a child: "under 5". */
export function countText(count: GuardedCount): string {
  return count.hidden ? `under ${smallestGroup}` : String(count.count)
}

export function partText(part: GuardedPart): string {
  if (!part.hidden) return `${part.count} of ${part.of}`
  if (part.isMoreThanHalf === null) return `squad of under ${smallestGroup}`
  return part.isMoreThanHalf ? 'more than half' : 'half or fewer'
}
