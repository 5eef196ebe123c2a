import type { Day } from '#common/time'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { Notice } from '#ui/page/notice'
import { Table } from '#ui/page/table'
import { WholePageLinkButton } from '#ui/page/whole-page-link-button'
import { paths, withChoices } from '#ui/paths'
import { RecordChoices, type RecordChosen } from '#ui/record/record-choices'

type RecordBodyProps = {
  readonly today: Day
  readonly timeZone: string
  readonly filter: RecordChosen & { readonly page: number }
  readonly lines: readonly { readonly id: string; readonly at: Date; readonly sentence: string }[]
  readonly hasMore: boolean
  readonly children: readonly { readonly id: string; readonly name: string }[]
  readonly people: readonly { readonly id: string; readonly name: string }[]
  readonly linesOfFile: number
}

const head = [
  { key: 'when', label: 'When' },
  { key: 'what', label: 'What' },
]

/** Who changed what and who looked at what, line by line. */
export function RecordBody(props: RecordBodyProps) {
  const { filter, lines, hasMore } = props
  const chosen = {
    kind: filter.kind,
    child: filter.playerId,
    person: filter.personId,
    from: filter.from,
    to: filter.to,
  }
  const pageAt = (page: number) =>
    withChoices(paths.clubRecord(), { ...chosen, page: page > 1 ? String(page) : null })
  return (
    <>
      <RecordChoices {...props} />
      {lines.length === 0 ? (
        <Empty>Nothing of this kind was done or seen in these days.</Empty>
      ) : (
        <Table caption="Changes and looks, the newest first" hideCaption head={head}>
          {lines.map(({ id, at, sentence }) => (
            <tr key={id}>
              <th scope="row" className="whitespace-nowrap font-normal text-soft">
                <time dateTime={at.toISOString()}>{inWords(at, props.timeZone)}</time>
              </th>
              <td>{sentence}</td>
            </tr>
          ))}
        </Table>
      )}
      <nav aria-label="Older and newer" className="no-print flex flex-wrap gap-3">
        {filter.page > 1 ? <LinkButton href={pageAt(filter.page - 1)}>Newer</LinkButton> : null}
        {hasMore ? <LinkButton href={pageAt(filter.page + 1)}>Older</LinkButton> : null}
        <WholePageLinkButton href={withChoices(paths.clubRecordFile(), chosen)}>
          Take this away as a file
        </WholePageLinkButton>
      </nav>
      <Notice>
        Nobody can change or remove these lines here, not even you. They hold who, what and when, never what
        was written. Names are those of today: where a child’s name was taken out, it is gone here too. A file
        holds the newest {props.linesOfFile.toLocaleString('en-GB')} lines at most; choose days for older
        ones.
      </Notice>
    </>
  )
}

function inWords(at: Date, timeZone: string): string {
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short', timeZone }).format(at)
}
