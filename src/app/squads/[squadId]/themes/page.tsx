import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadThemes } from '#server/theme-views'
import { getViewer } from '#server/viewer'
import { WrittenLine } from '#ui/book/written-line'
import { ThemesBody } from '#ui/themes/themes-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.themes }

type ThemesPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<{ readonly term?: string | string[] }>
}

export default async function ThemesPage({ params, searchParams }: ThemesPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const book = await orNotFound(loadThemes(viewer, { squadId, query: await searchParams }))
  return (
    <Shell
      frame={book.frame}
      tab="themes"
      title={`Themes: ${book.squad.name}`}
      lead={<WrittenLine count={book.written} kind="practice" />}
    >
      <ThemesBody {...book} />
    </Shell>
  )
}
