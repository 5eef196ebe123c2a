import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import {
  addTheme,
  changeProgramme,
  changeProgrammeBlocks,
  changeProgrammeRules,
  changeTheme,
  changeThemeFocus,
  moveTheme,
  takeProgramme,
} from '#server/theme-actions'
import { loadThemes } from '#server/theme-views'
import { getViewer } from '#server/viewer'
import { WrittenLine } from '#ui/book/written-line'
import { MissingPart } from '#ui/themes/missing-part'
import { ThemesBody } from '#ui/themes/themes-body'
import { ThemesChange } from '#ui/themes/themes-change'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.themes }

type ThemesPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<{ readonly term?: string | string[] }>
}

const sends = {
  add: addTheme,
  change: changeTheme,
  move: moveTheme,
  programme: changeProgramme,
  rules: changeProgrammeRules,
  blocks: changeProgrammeBlocks,
  take: takeProgramme,
  focus: changeThemeFocus,
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
      {book.missing ? (
        <MissingPart
          squadId={book.squad.id}
          themes={book.rows.map(({ theme }) => theme)}
          missing={book.missing}
        />
      ) : null}
      {book.mayChange ? <ThemesChange {...book} sends={sends} /> : null}
    </Shell>
  )
}
