import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { planAttendance } from '#exchange/attendance/plan-attendance'
import { readAttendance } from '#exchange/attendance/read-attendance'
import { decodeText } from '#exchange/csv/decode-text'
import { readRows } from '#exchange/csv/read-rows'
import { planRoster } from '#exchange/roster/plan-roster'
import { readRoster } from '#exchange/roster/read-roster'
import { noSettings } from '#exchange/table/file-settings'
import { demoSquads } from '../../seeds/club'
import { buildDemoClub } from '../../seeds/demo-club'
import { demoFiles } from '../../seeds/demo-files'

const club = buildDemoClub()
const stored = (name: string) => readFileSync(new URL(`../../seeds/${name}`, import.meta.url))

function rowsOf(name: string) {
  const text = decodeText(stored(name), null)
  if (!text.ok) throw new Error(text.reasons[0]?.message)
  const rows = readRows(text.value.text, null)
  if (!rows.ok) throw new Error(rows.reasons[0]?.message)
  return { ...text.value, ...rows.value }
}

const members = club.memberships.filter((line) => line.squadId === demoSquads.underTen.id)
const known = club.players
  .filter((player) => members.some((line) => line.playerId === player.id))
  .map((player) => ({
    ...player,
    code: null,
    isOfSquad: true,
    memberships: members.filter((line) => line.playerId === player.id),
  }))

describe('the files beside the demo club', () => {
  it.each([...demoFiles()])('%s is what the demo club makes', (name, bytes) => {
    expect(stored(name).equals(bytes)).toBe(true)
  })

  it('the roster: Windows-1252, semicolons, a title, one row doubled, one player known, four new', () => {
    const file = rowsOf('demo-roster.csv')
    expect([file.encoding, file.separator]).toEqual(['windows-1252', ';'])
    const { rows, headerLine } = readRoster(file.rows, noSettings, club.season)
    const plan = planRoster(rows, { known, answers: new Map(), defaultFirstDay: club.club.calendarDay })
    expect(headerLine).toBe(2)
    expect(plan.map(({ outcome }) => outcome.kind)).toEqual(['new', 'new', 'new', 'new', 'doubled', 'known'])
    const names = rows.map(({ result }) => (result.kind === 'understood' ? result.entry.name : result.kind))
    expect(names).toContain('Zoë D’Arcy-Møss')
    expect(names).toContain('Ana María Pebble "Pip" Brookes')
  })

  it('the attendance list fills the registers of three practices that nobody wrote down', () => {
    const file = rowsOf('demo-attendance.csv')
    const { rows, marks } = readAttendance(file.rows, { ...noSettings, marks: {} }, club.season)
    expect(marks.every((mark) => mark.meaning !== null)).toBe(true)
    const plan = planAttendance(rows, {
      known,
      answers: new Map(),
      sessions: club.sessions
        .filter((session) => session.squadId === demoSquads.underTen.id)
        .map((session) => ({ ...session, code: null, isCancelled: session.cancelledAt !== null })),
      leftOutSessions: new Set(),
      seasons: [club.season],
      today: club.club.calendarDay,
      newPlayers: 'ask',
      lengthSeconds: 3600,
      lateSeconds: 600,
    })
    expect(plan.players.every(({ outcome }) => outcome.kind === 'known')).toBe(true)
    expect(plan.sessions.map(({ outcome }) => outcome.kind)).toEqual(['fill', 'fill', 'fill'])
  })
})
