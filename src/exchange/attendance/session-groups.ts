import type { AttendanceMark, SessionName } from '#exchange/attendance/attendance-entry'
import type { PlayerGroup } from '#exchange/attendance/player-groups'

export type PlayerMark = { readonly player: number; readonly line: number; readonly mark: AttendanceMark }

/** A session of the file with the marks of all its players. */
export type SessionGroup = {
  readonly key: string
  readonly name: SessionName
  readonly marks: readonly PlayerMark[]
  /** Days that rows give to one and the same session code; more than one is a problem. */
  readonly days: readonly string[]
}

/** By day, then as they stand in the file. */
export function groupBySession(groups: readonly PlayerGroup[]): readonly SessionGroup[] {
  const sessions = new Map<
    string,
    { key: string; name: SessionName; marks: PlayerMark[]; days: Set<string> }
  >()
  for (const group of groups) {
    for (const { line, entry } of group.rows) {
      for (const mark of entry.marks) {
        const key = sessionKey(mark.session)
        const session = sessions.get(key) ?? { key, name: mark.session, marks: [], days: new Set() }
        session.marks.push({ player: group.line, line, mark })
        session.days.add(mark.session.day)
        sessions.set(key, session)
      }
    }
  }
  return [...sessions.values()]
    .map((session) => ({ ...session, days: [...session.days] }))
    .sort((a, b) => (a.name.day < b.name.day ? -1 : a.name.day > b.name.day ? 1 : 0))
}

function sessionKey({ code, day, kind, title }: SessionName): string {
  return code === null ? `${day} ${kind} ${title.toLowerCase()}` : `code ${code}`
}
