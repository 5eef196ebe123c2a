import { newId } from '#data/ids'
import { ids } from './guarded-club'

/** An insert of the columns given, each a piece of SQL. */
export function insert(table: string, columns: Record<string, string | number | boolean | null>): string {
  const text = (value: string | number | boolean | null) =>
    typeof value === 'string' && !/^(now\(\)|'.*'.*)$/s.test(value)
      ? `'${value.replaceAll("'", "''")}'`
      : String(value)
  const own = { clubId: ids.club, ...columns }
  const names = Object.keys(own).map((name) => `"${name}"`)
  return `insert into "${table}" (${names.join(', ')}) values (${Object.values(own).map(text).join(', ')})`
}

/** A day inside the season. */
const day = '2026-09-10'
export const person = (name: string) => insert('Person', { id: newId(), name, role: 'coach' })
export const player = (columns: object) => insert('Player', { id: newId(), name: 'Ola', ...columns })
export const theme = (columns: object) => insert('Theme', { id: newId(), name: 'T', order: 1, ...columns })
export const season = (firstDay: string, lastDay: string) =>
  insert('Season', { id: newId(), name: 'S', firstDay, lastDay })
export const term = (firstDay: string, lastDay: string) =>
  insert('Term', { id: newId(), seasonId: ids.season, name: 'T', firstDay, lastDay })
export const squad = (columns: object) =>
  insert('Squad', { id: newId(), name: 'S', ageLimit: 10, ...columns })
export const membership = (firstDay: string, lastDay: string | null) =>
  insert('SquadMembership', { id: newId(), squadId: ids.squad, playerId: ids.player, firstDay, lastDay })
export const squadCoach = (firstDay: string, lastDay: string | null) =>
  insert('SquadCoach', {
    id: newId(),
    squadId: ids.squad,
    personId: ids.coach,
    kind: 'cover',
    firstDay,
    lastDay,
  })
export const adjustment = (columns: object) =>
  insert('Adjustment', {
    id: newId(),
    playerId: ids.player,
    kind: 'fewerTurns',
    dueShare: 0.5,
    firstDay: day,
    ...columns,
  })
export const keepsChange = (columns: object) =>
  insert('KeepsChange', { playerId: ids.player, seq: 1, day, keeps: false, ...columns })
export const design = (columns: object) =>
  insert('PracticeDesign', {
    id: newId(),
    name: 'D',
    areaLengthM: 20,
    areaWidthM: 20,
    rounds: '[]',
    ...columns,
  })
export const session = (columns: object) =>
  insert('Session', { id: newId(), squadId: ids.squad, kind: 'practice', day, ...columns })
export const registerLine = (columns: object) =>
  insert('RegisterLine', {
    id: newId(),
    sessionId: ids.practice,
    playerId: ids.player,
    state: 'here',
    fromSecond: 100,
    toSecond: 200,
    ...columns,
  })
export const spell = (columns: object) =>
  insert('MatchSpell', {
    id: newId(),
    sessionId: ids.match,
    playerId: ids.player,
    line: 'back',
    startSecond: 60,
    endSecond: 90,
    ...columns,
  })
export const event = (columns: object) =>
  insert('TurnEvent', { id: newId(), sessionId: ids.practice, seq: 90, kind: 'turn', ...columns })
export const turn = (columns: object) =>
  event({ startSecond: 300, endSecond: 345, stationCount: 1, ...columns })
export const passed = (columns: object) =>
  event({ kind: 'passed', playerId: ids.player, role: 'attack', lengthSeconds: 45, ...columns })
export const voiding = (voidsId: string, columns: object = {}) => event({ kind: 'void', voidsId, ...columns })
export const seat = (turnEventId: string, columns: object = {}) =>
  insert('TurnSeat', { turnEventId, playerId: ids.player, station: 1, role: 'keep', place: 1, ...columns })
export const turnWithSeat = (columns: object) => {
  const id = newId()
  return `${turn({ id })}; ${seat(id, columns)}`
}
export const exposure = (columns: object) =>
  insert('Exposure', {
    sessionId: ids.practice,
    playerId: ids.player,
    role: 'attack',
    situation: 'level',
    line: 'none',
    themeId: ids.theme,
    isMember: true,
    seconds: 1,
    turns: 1,
    fairSeconds: 1,
    fairTurns: 1,
    fullFairSeconds: 1,
    membersFairSeconds: 1,
    openGoalFairSeconds: 1,
    ...columns,
  })
export const presence = (columns: object) =>
  insert('SessionPresence', {
    sessionId: ids.practice,
    playerId: ids.player,
    isMember: true,
    attendance: 'here',
    liveSeconds: 45,
    turnsPresent: 1,
    longestRestTurns: 0,
    ...columns,
  })
export const policy = (columns: object) =>
  insert('PolicyVersion', {
    id: newId(),
    effectiveFrom: day,
    toleranceSeconds: 600,
    toleranceShare: 0.15,
    middleAttackShare: 0.5,
    restLimitTurns: 2,
    goalShareLimit: 0.5,
    leastMatchShare: 0.5,
    writtenShareNeeded: 0.6,
    sessionsBeforeFlags: 4,
    matchesBeforeRoles: 4,
    ...columns,
  })
export const flag = (columns: object) =>
  insert('FlagState', {
    id: newId(),
    squadId: ids.squad,
    seasonId: ids.season,
    playerId: ids.player,
    rule: 'attackShort',
    scope: 'practice',
    status: 'open',
    since: day,
    sinceSessionId: ids.practice,
    isClosing: false,
    gapSeconds: -700,
    toleranceSeconds: 600,
    size: 700,
    detail: '{}',
    ...columns,
  })
export const answered = { acknowledgedAt: 'now()', acknowledgedReason: 'Next week.', acknowledgedSize: 700 }
export const review = (columns: object) =>
  insert('TermReview', {
    squadId: ids.squad,
    termId: ids.term,
    openedOn: day,
    openedById: ids.coach,
    ...columns,
  })
export const audit = (columns: object) =>
  insert('AuditEntry', { id: newId(), action: 'a', objectKind: 'k', objectId: 'o', detail: '{}', ...columns })
export const pair = (columns: object) =>
  insert('PlayerPair', {
    id: newId(),
    squadId: ids.squad,
    oneId: ids.player,
    otherId: ids.other,
    kind: 'apart',
    firstDay: day,
    ...columns,
  })
export const sessionPlan = (columns: object) =>
  insert('SessionPlan', { sessionId: ids.practice, version: 1, plan: '{}', madeAt: 'now()', ...columns })
export const matchFormat = (columns: object) =>
  insert('MatchFormat', { id: newId(), name: 'Sevens', definition: '{}', ...columns })
export const lineWish = (columns: object) =>
  insert('LineWish', { playerId: ids.player, line: 'back', wish: 'likes', ...columns })
export const pitchEvent = (columns: object) =>
  insert('PitchEvent', {
    id: newId(),
    sessionId: ids.practice,
    deviceId: newId(),
    at: 'now()',
    seq: 1,
    deed: '{"kind":"begin"}',
    ...columns,
  })
export const helperPass = (columns: object) =>
  insert('HelperPass', {
    id: newId(),
    sessionId: ids.practice,
    secretHash: 'a'.repeat(64),
    expiresAt: '2026-09-11T00:00:00Z',
    madeAt: '2026-09-10T12:00:00Z',
    ...columns,
  })
export const programmeEntry = (columns: object) =>
  insert('ProgrammeEntry', {
    squadId: ids.squad,
    termId: ids.term,
    themeId: ids.childTheme,
    wishedShare: 0.2,
    ...columns,
  })
export const block = (columns: object) =>
  insert('ProgrammeBlock', {
    id: newId(),
    squadId: ids.squad,
    termId: ids.term,
    themeId: ids.theme,
    firstWeek: 2,
    lastWeek: 3,
    ...columns,
  })
export const themeDesign = (columns: object) =>
  insert('ThemeDesign', { themeId: ids.theme, designId: newId(), ...columns })
export const closedDays = (columns: object) =>
  insert('ClosedDays', {
    id: newId(),
    firstDay: '2026-10-26',
    lastDay: '2026-10-30',
    name: 'Half term',
    ...columns,
  })
export const ground = (columns: object) =>
  insert('GroundSize', { place: 'Long Meadow', lengthM: 60, widthM: 40, ...columns })
export const away = (columns: object) =>
  insert('PlayerAway', {
    id: newId(),
    playerId: ids.player,
    firstDay: '2026-10-12',
    lastDay: '2026-10-20',
    ...columns,
  })
export const termPlan = (columns: object) =>
  insert('TermPlan', {
    squadId: ids.squad,
    termId: ids.term,
    version: 1,
    plan: '{}',
    madeAt: 'now()',
    ...columns,
  })
export const calendarFeed = (columns: object) =>
  insert('CalendarFeed', {
    id: newId(),
    personId: ids.coach,
    secretHash: 'a'.repeat(64),
    madeAt: 'now()',
    ...columns,
  })
