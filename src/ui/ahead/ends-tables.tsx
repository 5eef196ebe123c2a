import { situations } from '#exposure/column'
import { seatRoles } from '#rotation/problem'
import { EndsTable, type EndsTableProps } from '#ui/ahead/ends-table'
import { Details } from '#ui/page/details'

type EndsTablesProps = Omit<EndsTableProps, 'caption' | 'columns'> & {
  /** "Roles at the end of the term". */
  readonly captionOf: (of: 'Roles' | 'Situations') => string
}

/** Where everyone ends in roles, and in situations for whoever wants to know. */
export function EndsTables({ captionOf, ...rows }: EndsTablesProps) {
  return (
    <>
      <EndsTable {...rows} caption={captionOf('Roles')} columns={seatRoles} />
      <Details summary="More of us, even, fewer of us">
        <EndsTable {...rows} caption={captionOf('Situations')} columns={situations} />
      </Details>
    </>
  )
}
