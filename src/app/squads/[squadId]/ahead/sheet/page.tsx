import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { loadAheadSheet } from '#server/ahead-sheet'
import { getViewer } from '#server/viewer'
import { AheadSheet } from '#ui/ahead/ahead-sheet'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { paths, withChoices } from '#ui/paths'
import { PrintPage } from '#ui/planning/print-page'

export const metadata: Metadata = { title: 'Weeks ahead, to print' }

type SheetPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<{ readonly term?: string; readonly names?: string | string[] }>
}

export default async function AheadSheetPage({ params, searchParams }: SheetPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const query = await searchParams
  const withNames = query.names === 'yes'
  const sheet = await orNotFound(loadAheadSheet(viewer, { squadId, query, withNames }))
  const here = paths.aheadSheet(squadId)
  const other = { term: query.term, names: withNames ? null : 'yes' }
  return (
    <PrintPage
      links={
        <>
          <LinkButton href={withChoices(paths.ahead(squadId), { term: query.term })}>
            Back to the weeks ahead
          </LinkButton>
          {sheet ? (
            <LinkButton href={withChoices(here, other)}>
              {withNames ? 'Without names' : 'With children’s names, for coaches only'}
            </LinkButton>
          ) : null}
        </>
      }
    >
      {sheet ? (
        <AheadSheet {...sheet} />
      ) : (
        <Empty>
          No plan of this term is saved yet. Save one on the page of the weeks ahead, then print it.
        </Empty>
      )}
    </PrintPage>
  )
}
