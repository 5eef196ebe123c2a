import { sessionMinute } from '#common/session-minute'
import type { Spell } from '#match/match'
import type { PracticeEvent } from '#practice/event'
import type { Station } from '#practice/turn'
import type { RegisterLine } from '#squad/register'
import { Details } from '#ui/page/details'
import { counted, listed } from '#ui/plural'
import { words } from '#ui/words'

/** By whom and when; the name is null when no person of the club wrote it. */
export type Hand = { readonly byName: string | null; readonly at: Date }

export type EventOfHistory = {
  readonly event: Exclude<PracticeEvent, { kind: 'void' }>
  readonly written: Hand
  readonly corrected: Hand | null
}

export type Corrected<Value> = { readonly value: Value; readonly written: Hand; readonly corrected: Hand }

type HistoryProps = {
  readonly events: readonly EventOfHistory[]
  readonly correctedLines: readonly Corrected<RegisterLine>[]
  readonly correctedSpells: readonly Corrected<Spell>[]
  readonly names: ReadonlyMap<string, string>
  readonly timeZone: string
}

/** Everything as it was written, in that order. What was corrected stays, struck through, with who did it and when. */
export function History({ events, correctedLines, correctedSpells, names, timeZone }: HistoryProps) {
  const correctedCount =
    events.filter(({ corrected }) => corrected).length + correctedLines.length + correctedSpells.length
  if (events.length + correctedCount === 0) return null
  const nameOf = (id: string) => names.get(id) ?? 'somebody'
  return (
    <Details summary={`Everything as it was written; ${counted(correctedCount, 'correction')}`}>
      <ol className="space-y-1">
        {events.map(({ event, written, corrected }) => (
          <Entry
            key={event.id}
            text={eventText(event, nameOf)}
            written={written}
            corrected={corrected}
            timeZone={timeZone}
          />
        ))}
        {correctedLines.map(({ value, written, corrected }) => (
          <Entry
            key={`line ${value.playerId} ${value.from} ${value.state} ${written.at.getTime()} ${corrected.at.getTime()}`}
            text={`${nameOf(value.playerId)}: ${words.register[value.state]}, minute ${sessionMinute(value.from)} to ${sessionMinute(value.to)}`}
            written={written}
            corrected={corrected}
            timeZone={timeZone}
          />
        ))}
        {correctedSpells.map(({ value, written, corrected }) => (
          <Entry
            key={`spell ${value.playerId} ${value.start} ${written.at.getTime()} ${corrected.at.getTime()}`}
            text={`${nameOf(value.playerId)}: ${words.line[value.line]}, minute ${sessionMinute(value.start)} to ${sessionMinute(value.end)}`}
            written={written}
            corrected={corrected}
            timeZone={timeZone}
          />
        ))}
      </ol>
    </Details>
  )
}

type EntryProps = {
  readonly text: string
  readonly written: Hand
  readonly corrected: Hand | null
  readonly timeZone: string
}

function Entry({ text, written, corrected, timeZone }: EntryProps) {
  return (
    <li className="border-b border-rule py-1.5">
      {corrected ? <del className="text-soft">{text}</del> : text}
      <span className="block text-sm text-soft">
        written {handText(written, timeZone)}
        {corrected ? `; corrected ${handText(corrected, timeZone)}` : ''}
      </span>
    </li>
  )
}

function handText({ byName, at }: Hand, timeZone: string): string {
  const time = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short', timeZone }).format(
    at,
  )
  return byName ? `by ${byName}, ${time}` : `from a file, ${time}`
}

function eventText(event: EventOfHistory['event'], nameOf: (id: string) => string): string {
  if (event.kind === 'passed') {
    return `${nameOf(event.playerId)} ${words.passed} (${words.doing[event.role]}, ${event.lengthSeconds} s)`
  }
  const { turn } = event
  const places = turn.stations.map((station) => stationText(station, nameOf)).filter(Boolean)
  const title = turn.round ? `${turn.round}, ` : ''
  return `${title}minute ${sessionMinute(turn.start)} to ${sessionMinute(turn.end)}: ${places.join('; ') || 'everyone waited'}`
}

function stationText(station: Station, nameOf: (id: string) => string): string {
  const part = (ids: readonly string[], word: string) =>
    ids.length > 0 ? `${listed(ids.map(nameOf))} ${word}` : ''
  return [
    part(station.attack, words.doing.attack),
    part(station.defend, words.doing.defend),
    part(station.keep, words.doing.keep),
  ]
    .filter(Boolean)
    .join(', ')
}
