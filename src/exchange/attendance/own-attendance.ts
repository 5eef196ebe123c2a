/** Header of the attendance written here: one row for each register line, and one for each member who was away. */
export const ownAttendanceHeader = [
  'Date',
  'Kind',
  'Title',
  'Session',
  'Length seconds',
  'Player',
  'Code',
  'Attendance',
  'From second',
  'To second',
] as const

export function isOwnAttendance(cells: readonly string[]): boolean {
  return (
    cells.length === ownAttendanceHeader.length && ownAttendanceHeader.every((word, at) => cells[at] === word)
  )
}
