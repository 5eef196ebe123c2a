import type { RegisterLine } from '#squad/register'
import { paths, withChoices } from '#ui/paths'
import type { EventOfHistory } from '#ui/sessions/history'
import { TurnsTable } from '#ui/sessions/turns-table'

type Named = { readonly id: string; readonly name: string }

type PracticeReadProps = {
  readonly squadId: string
  readonly sessionId: string
  readonly events: readonly EventOfHistory[]
  readonly register: readonly RegisterLine[]
  readonly players: readonly Named[]
  readonly themes: readonly Named[]
  readonly mayWrite: boolean
}

/** The turns that stand: players × turns, each turn with its numbers and the way to correct it. */
export function PracticeRead({ squadId, sessionId, events, mayWrite, ...rest }: PracticeReadProps) {
  const turns = events
    .flatMap(({ event, corrected }) =>
      event.kind === 'turn' && !corrected ? [{ eventId: event.id, turn: event.turn }] : [],
    )
    .toSorted((one, other) => one.turn.start - other.turn.start)
  const write = paths.writeSession(squadId, { sessionId })
  return (
    <TurnsTable
      {...rest}
      turns={turns}
      correctHref={mayWrite ? (eventId) => withChoices(write, { turn: eventId }) : null}
    />
  )
}
