import type { StationSeats } from '#rotation/problem'
import { PitchButton } from '#ui/pitch/pitch-button'
import { listed } from '#ui/plural'

/** A round that cannot be filled as planned, and the areas it could be played in; the first is taken unless another is chosen. */
export type RoundShapes = {
  /** From 0. */
  readonly round: number
  readonly proposals: readonly { readonly sentence: string; readonly stations: readonly StationSeats[] }[]
}

/** What there is to say of the last new rotation. */
export type RotationNews = {
  /** False: none works with those who are here. */
  readonly isMade: boolean
  readonly shapes: readonly RoundShapes[]
  readonly chosen: ReadonlyMap<number, readonly StationSeats[]>
  /** A fairer one is being looked for. */
  readonly isSearching: boolean
  /** How fair it is; null: not known yet. */
  readonly proof: string | null
  /** Names of those with whom something was agreed that could not all be kept. Said on this phone alone. */
  readonly notKept: readonly string[]
}

type RotationNoticeProps = {
  readonly news: RotationNews | null
  /** The plan does not fit who is here, and this phone may make a new one: for so many. */
  readonly neededFor: number | null
  /** The round on the screen, from 0; null: none is left. */
  readonly round: number | null
  readonly onPlanAnew: () => void
  readonly onShape: (round: number, stations: readonly StationSeats[]) => void
}

/** What has to be seen before the places: that the plan does not fit, and what was made smaller. */
export function RotationNotice({ news, neededFor, round: now, onPlanAnew, onShape }: RotationNoticeProps) {
  const shapes =
    news?.shapes.filter(({ round, proposals }) => proposals.length > 0 && round >= (now ?? 0)) ?? []
  const isImpossible = news !== null && !news.isMade
  return (
    <div className="space-y-2 empty:hidden">
      {isImpossible ? (
        <p role="alert" className="border-2 border-ink p-2 font-semibold">
          No rotation works for those who are here. The plan stays as it was; places of those who are missing
          are empty.
        </p>
      ) : null}
      {neededFor !== null && !isImpossible ? (
        <PitchButton className="w-full" onClick={onPlanAnew}>
          The plan does not fit who is here: new rotation for {neededFor}
        </PitchButton>
      ) : null}
      {shapes.length > 0 ? (
        <details className="border-2 border-ink px-2">
          <summary className="flex items-center py-1 leading-tight font-semibold">
            <span>
              {tooFewWords(shapes, news?.chosen ?? new Map(), now)}
              <span className="block font-normal underline underline-offset-4">Other areas…</span>
            </span>
          </summary>
          <div className="space-y-3 pb-2">
            {shapes.map(({ round, proposals }) => (
              <ShapeChoice
                key={round}
                round={round}
                proposals={proposals}
                chosen={news?.chosen.get(round)}
                onShape={(stations) => onShape(round, stations)}
              />
            ))}
          </div>
        </details>
      ) : null}
    </div>
  )
}

/** "Too few for the plan. This round: two areas instead of three. One waits." Only of rounds to come: their number. */
export function tooFewWords(
  shapes: readonly RoundShapes[],
  chosen: RotationNews['chosen'],
  now: number | null,
): string {
  const own = shapes.find(({ round }) => round === now)
  if (!own)
    return `Too few for ${roundsWords(shapes.map(({ round }) => round + 1))} as planned: smaller areas.`
  const standing = standingShape(own, chosen.get(own.round))
  return `Too few for the plan. This round: ${standing?.sentence ?? 'smaller areas.'}`
}

function roundsWords(rounds: readonly number[]): string {
  return `${rounds.length > 1 ? 'rounds' : 'round'} ${listed(rounds.map(String))}`
}

/** The areas that a round is played in: those chosen, else the first proposed. */
function standingShape({ proposals }: RoundShapes, chosen: readonly StationSeats[] | undefined) {
  return chosen
    ? proposals.find(({ stations }) => JSON.stringify(stations) === JSON.stringify(chosen))
    : proposals[0]
}

/** How fair the rotation is, and whether a fairer one is being looked for. */
export function RotationProof({
  news,
  sentence,
}: {
  readonly news: RotationNews | null
  /** What the last new rotation said of itself, on whichever phone it was made. */
  readonly sentence: string | null
}) {
  const said = news?.proof ?? sentence
  const notKept = news?.notKept ?? []
  if (!said && !news?.isSearching && notKept.length === 0) return null
  return (
    <p role="status" className="text-base">
      {said}
      {news?.isSearching ? ' Looking for a fairer one…' : ''}
      {notKept.length > 0 ? ` Not all that is agreed with ${listed(notKept)} could be kept.` : ''}
    </p>
  )
}

type ShapeChoiceProps = RoundShapes & {
  readonly chosen: readonly StationSeats[] | undefined
  readonly onShape: (stations: readonly StationSeats[]) => void
}

function ShapeChoice({ round, proposals, chosen, onShape }: ShapeChoiceProps) {
  const now = chosen ?? proposals[0]?.stations
  return (
    <fieldset className="space-y-1">
      <legend className="font-semibold">Round {round + 1} becomes</legend>
      {proposals.map(({ sentence, stations }) => (
        <PitchButton
          key={sentence}
          aria-pressed={JSON.stringify(stations) === JSON.stringify(now)}
          className="w-full text-left aria-pressed:bg-ink aria-pressed:text-white"
          onClick={() => onShape(stations)}
        >
          {sentence}
        </PitchButton>
      ))}
    </fieldset>
  )
}
