import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import {
  agree,
  changeAboutPlayer,
  changeKeeps,
  changeLines,
  changeMembership,
  endAgreement,
} from '#server/player-actions'
import { loadPlayerBook } from '#server/player-views'
import { getViewer } from '#server/viewer'
import { addAway, removeAway } from '#server/weeks-actions'
import { WrittenLine } from '#ui/book/written-line'
import { LinkButton } from '#ui/page/button'
import { Choice } from '#ui/page/choice'
import { paths, withChoices } from '#ui/paths'
import { PlayerBody } from '#ui/player/player-body'
import { PlayerFlags } from '#ui/player/player-flags'
import { PlayerSettings } from '#ui/player/player-settings'
import { words } from '#ui/words'

export const metadata: Metadata = { title: 'Player' }

type PlayerPageProps = {
  readonly params: Promise<{ readonly squadId: string; readonly playerId: string }>
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>
}

const sends = {
  about: changeAboutPlayer,
  keeps: changeKeeps,
  lines: changeLines,
  membership: changeMembership,
  agree,
  endAgreement,
  addAway,
  removeAway,
}

export default async function PlayerPage({ params, searchParams }: PlayerPageProps) {
  const viewer = await getViewer()
  const { squadId, playerId } = await params
  const query = await searchParams
  const book = await orNotFound(loadPlayerBook(viewer, { squadId, playerId, query }))
  const path = paths.player(squadId, { playerId })
  const kinds = (['practice', 'match'] as const).map((kind) => ({
    label: words.kinds[kind],
    href: withChoices(path, { kind: kind === 'match' ? kind : null }),
    isChosen: book.kind === kind,
  }))
  return (
    <Shell
      frame={book.frame}
      tab="book"
      title={book.player.name}
      lead={<WrittenLine count={book.written} kind={book.kind} />}
    >
      <PlayerFlags flags={book.flags} />
      <Choice label="Look at" options={kinds} />
      <PlayerBody {...book} />
      {book.settings ? <PlayerSettings {...book.settings} agreed={book.agreed} sends={sends} /> : null}
      <p className="no-print">
        <LinkButton href={paths.familyPreview(squadId, { playerId })}>The page the family sees</LinkButton>
      </p>
    </Shell>
  )
}
