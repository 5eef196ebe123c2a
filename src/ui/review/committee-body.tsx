import { committeeRow } from '#fairness/committee'
import type { Term } from '#squad/squad'
import { Empty } from '#ui/page/empty'
import { SectionTitle } from '#ui/page/section-title'
import { CommitteeTable } from '#ui/review/committee-table'
import { Meaning } from '#ui/review/indices-part'
import { programmeText, type ReviewedSquad } from '#ui/review/squad-part'

type CommitteeBodyProps = {
  readonly term: Term | null
  readonly squads: readonly ReviewedSquad[]
}

export function CommitteeBody({ term, squads }: CommitteeBodyProps) {
  if (!term || squads.length === 0) return <Empty>There is nothing to review yet.</Empty>
  return (
    <>
      <CommitteeTable
        caption={`Review of ${term.name}`}
        squads={squads.map((reviewed) => ({
          squad: reviewed.squad,
          rows: (['practice', 'match'] as const).map((kind) => ({
            kind,
            row: committeeRow(reviewed.figures[kind], reviewed.flags.byKind[kind]),
          })),
        }))}
      />
      <section>
        <SectionTitle>Programme, and where each review stands</SectionTitle>
        <ul className="text-sm">
          {squads.map(({ squad, coverage, review }) => (
            <li key={squad.id} className="py-0.5">
              {squad.name}: {programmeText(coverage)}. {review?.isFinal ? 'Final.' : 'Not final yet.'}
            </li>
          ))}
        </ul>
      </section>
      <section className="keep-together space-y-2">
        <h2 className="text-lg font-semibold">How to read this</h2>
        <p className="max-w-prose text-sm text-soft">
          No player is named, and groups of one to four are hidden, as is what they could be reckoned from.
          The band is the difference from an even share that the club’s policy calls about even. Squads stand
          in the order of age. Jain and Gini are of time played.
        </p>
        <Meaning plannedShare={0} />
      </section>
    </>
  )
}
