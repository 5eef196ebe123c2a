import type { PlayerId } from '#squad/player'
import type { PlacedPlayer } from '#touchline/match-deed'
import { lineWord } from '#ui/touchline/line-words'

export type ChangeNames = {
  readonly off: readonly PlayerId[]
  readonly on: readonly PlacedPlayer[]
  /** On before and after, in another line. */
  readonly moved: readonly PlacedPlayer[]
}

type ChangeLinesProps = { readonly change: ChangeNames; readonly nameOf: (id: PlayerId) => string }

/** Who goes off, who comes on and where, to be called out. */
export function ChangeLines({ change, nameOf }: ChangeLinesProps) {
  const { off, on, moved } = change
  return (
    <dl className="grid grid-cols-[auto_1fr] items-baseline gap-x-3 gap-y-1">
      {off.length > 0 ? (
        <>
          <dt className="text-xl font-bold">OFF</dt>
          <dd className="text-[1.75rem] leading-tight font-bold">{off.map(nameOf).join(', ')}</dd>
        </>
      ) : null}
      {on.map(({ playerId, line }) => (
        <Row key={playerId} word="ON" name={nameOf(playerId)} where={lineWord(line)} />
      ))}
      {moved.map(({ playerId, line }) => (
        <Row key={playerId} word="TO" name={nameOf(playerId)} where={lineWord(line)} />
      ))}
    </dl>
  )
}

function Row({
  word,
  name,
  where,
}: {
  readonly word: string
  readonly name: string
  readonly where: string
}) {
  return (
    <>
      <dt className="text-xl font-bold">{word}</dt>
      <dd className="text-[1.75rem] leading-tight font-bold">
        {name} <span className="text-xl font-semibold">{where}</span>
      </dd>
    </>
  )
}
