import type { ReactNode } from 'react'
import { Details } from '#ui/page/details'
import { Table, type TableHead } from '#ui/page/table'

type ChartTableProps = {
  readonly caption: string
  readonly head: readonly TableHead[]
  readonly children: ReactNode
}

/** The figures of a drawing as a table, for everyone who would rather read them. */
export function ChartTable({ caption, head, children }: ChartTableProps) {
  return (
    <Details summary="The same as a table">
      <Table caption={`${caption}, as a table`} hideCaption head={head}>
        {children}
      </Table>
    </Details>
  )
}
