import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadFilesPage } from '#server/files-views'
import { checkFileAction, importFileAction } from '#server/import-actions'
import { getViewer } from '#server/viewer'
import { ExportPart } from '#ui/files/export-part'
import { ImportPart } from '#ui/files/import-part'
import { LinkButton } from '#ui/page/button'
import { paths } from '#ui/paths'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.files }

type FilesPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>
}

export default async function FilesPage({ params, searchParams }: FilesPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const { term } = await searchParams
  const page = await orNotFound(
    loadFilesPage(viewer, { squadId, term: typeof term === 'string' ? term : null }),
  )
  return (
    <Shell
      frame={page.frame}
      tab="files"
      title={`Files: ${page.squad.name}`}
      lead="Take in the lists you have, and take the book away again."
    >
      {page.mayImport ? (
        <ImportPart squadId={squadId} check={checkFileAction} save={importFileAction} />
      ) : null}
      {page.mayExport ? <ExportPart {...page} /> : null}
      <p>
        <LinkButton href={paths.players(squadId)}>Players: add a single one</LinkButton>
      </p>
    </Shell>
  )
}
