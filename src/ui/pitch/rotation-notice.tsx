import type { StationSeats } from '#rotation/problem'
import { PitchButton } from '#ui/pitch/pitch-button'

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
}

type RotationNoticeProps = {
  readonly news: RotationNews | null
  /** What the last new rotation said of itself, on whichever phone it was made. */
  readonly sentence: string | null
  /** The plan does not fit who is here, and this phone may make a new one: for so many. */
  readonly neededFor: number | null
  readonly onPlanAnew: () => void
  readonly onShape: (round: number, stations: readonly StationSeats[]) => void
}

/** Whether the rotation fits who is here, how fair it is, and what was made smaller for it. */
export function RotationNotice({ news, sentence, neededFor, onPlanAnew, onShape }: RotationNoticeProps) {
  const shapes = news?.shapes.filter(({ proposals }) => proposals.length > 0) ?? []
  const said = news?.proof ?? sentence
  return (
    <div className="space-y-2 empty:hidden">
      {news && !news.isMade ? (
        <p role="alert" className="border-2 border-ink p-2 font-semibold">
          No rotation works for those who are here. The plan stays as it was; places of those who are missing
          are empty.
        </p>
      ) : null}
      {neededFor !== null && !(news && !news.isMade) ? (
        <PitchButton className="w-full" onClick={onPlanAnew}>
          The plan does not fit who is here: new rotation for {neededFor}
        </PitchButton>
      ) : null}
      {shapes.map(({ round, proposals }) => (
        <ShapeChoice
          key={round}
          round={round}
          proposals={proposals}
          chosen={news?.chosen.get(round)}
          onShape={(stations) => onShape(round, stations)}
        />
      ))}
      {said || news?.isSearching ? (
        <p role="status" className="text-base">
          {said}
          {news?.isSearching ? ' Looking for a fairer one…' : ''}
        </p>
      ) : null}
    </div>
  )
}

type ShapeChoiceProps = RoundShapes & {
  readonly chosen: readonly StationSeats[] | undefined
  readonly onShape: (stations: readonly StationSeats[]) => void
}

function ShapeChoice({ round, proposals, chosen, onShape }: ShapeChoiceProps) {
  const now = chosen ?? proposals[0]?.stations
  return (
    <fieldset className="space-y-1 border-2 border-ink p-2">
      <legend className="px-1 font-semibold">Too few for round {round + 1} as planned. It becomes:</legend>
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
