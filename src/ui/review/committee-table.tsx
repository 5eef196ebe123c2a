import type { CommitteeRow, GuardedCount, GuardedPart } from '#fairness/committee'
import { smallestGroup } from '#fairness/committee'
import { Table } from '#ui/page/table'
import { indexText } from '#ui/review/indices-part'
import { writtenText } from '#ui/review/written-bar'
import { words } from '#ui/words'

export type CommitteeSquad = {
  readonly squad: { readonly id: string; readonly name: string }
  readonly rows: readonly { readonly kind: 'practice' | 'match'; readonly row: CommitteeRow }[]
  readonly programme: string
  /** Null: not opened. */
  readonly isFinal: boolean | null
}

/** The term as a committee may have it: no child's name, groups under five hidden. */
export function CommitteeTable({
  caption,
  squads,
}: {
  readonly caption: string
  readonly squads: readonly CommitteeSquad[]
}) {
  return (
    <Table
      caption={caption}
      hideCaption
      head={[
        { key: 'squad', label: 'Squad' },
        { key: 'written', label: 'Written down' },
        { key: 'band', label: 'Within the band' },
        { key: 'flags', label: 'Flags open · answered' },
        { key: 'jain', label: 'Jain', isFigure: true },
        { key: 'gini', label: 'Gini', isFigure: true },
      ]}
    >
      {squads.flatMap(({ squad, rows, programme, isFinal }) =>
        rows.map(({ kind, row }, index) => (
          <tr key={`${squad.id} ${kind}`}>
            <th scope="row">
              {squad.name}, {words.kinds[kind].toLowerCase()}
              {index === 0 ? (
                <span className="block text-sm font-normal text-soft">
                  Programme: {programme}. {isFinal ? '' : 'Not final yet.'}
                </span>
              ) : null}
            </th>
            <td>{writtenText(row.written)}</td>
            {row.said ? (
              <>
                <td>{partText(row.said.withinBand)}</td>
                <td>
                  {countText(row.said.flagsOpen)} · {countText(row.said.flagsAnswered)}
                </td>
                <td className="figure">{indexText(row.said.jainPlayed)}</td>
                <td className="figure">{indexText(row.said.giniPlayed)}</td>
              </>
            ) : (
              <td colSpan={4}>{words.notEnoughWritten}</td>
            )}
          </tr>
        )),
      )}
    </Table>
  )
}

/** "3 or 4" could point at a child: "fewer than 5". */
export function countText(count: GuardedCount): string {
  return count.hidden ? `fewer than ${smallestGroup}` : String(count.count)
}

export function partText(part: GuardedPart): string {
  if (!part.hidden) return `${part.count} of ${part.of}`
  if (part.isMoreThanHalf === null) return `squad of fewer than ${smallestGroup}`
  return part.isMoreThanHalf ? 'more than half' : 'half or fewer'
}
