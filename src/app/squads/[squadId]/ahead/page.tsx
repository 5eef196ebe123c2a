import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { AheadPlanner } from '#app/squads/[squadId]/ahead/ahead-planner'
import { saveWeeksAhead } from '#server/ahead-actions'
import { loadAheadPage } from '#server/ahead-views'
import { cancelWritten, changeWhenAndWhere } from '#server/session-actions'
import { getViewer } from '#server/viewer'
import { addAway } from '#server/weeks-actions'
import { AheadBody } from '#ui/ahead/ahead-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.ahead }

type AheadPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<{ readonly term?: string | string[] }>
}

const whatIfs = { move: changeWhenAndWhere, cancel: cancelWritten, away: addAway }

export default async function AheadPage({ params, searchParams }: AheadPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const page = await orNotFound(loadAheadPage(viewer, { squadId, query: await searchParams }))
  const { term } = page
  return (
    <Shell frame={page.frame} tab="ahead" title={`${words.tab.ahead}: ${page.squad.name}`}>
      <AheadBody squad={page.squad} terms={page.terms} term={term}>
        {term ? (
          <AheadPlanner
            key={term.basis}
            squadId={squadId}
            term={term}
            save={saveWeeksAhead}
            whatIfs={whatIfs}
          />
        ) : null}
      </AheadBody>
    </Shell>
  )
}
