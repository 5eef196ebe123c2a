import { describe, expect, it } from 'vitest'
import { attendanceOf } from '#fairness/attendance'
import type { RegisterLine, RegisterState } from '#squad/register'

const line = (state: RegisterState, from: number, to: number): RegisterLine => ({
  playerId: 'a',
  state,
  from,
  to,
})
// The ball was in play from 300 to 3000.
const live = { from: 300, to: 3000 }

describe('attendance', () => {
  it.each<[string, RegisterLine[], string]>([
    ['nobody wrote a line', [], 'away'],
    ['there all along', [line('here', 0, 3600)], 'here'],
    ['there before the first ball', [line('here', 300, 3000)], 'here'],
    ['there after the first ball began', [line('here', 301, 3600)], 'late'],
    ['gone before the last ball ended', [line('here', 0, 2999)], 'left'],
    ['late and gone early', [line('here', 900, 2000)], 'late'],
    ['there without playing', [line('notPlaying', 0, 3600)], 'notPlaying'],
    ['not playing at first, then in', [line('notPlaying', 0, 900), line('here', 900, 3600)], 'here'],
    ['out for today after a knock', [line('here', 0, 900), line('out', 900, 3600)], 'out'],
  ])('of one who was %s', (_who, lines, attendance) => {
    expect(attendanceOf(lines, live)).toBe(attendance)
  })

  it('is judged from the start where nothing was played', () => {
    expect(attendanceOf([line('here', 0, 60)], null)).toBe('here')
    expect(attendanceOf([line('here', 1, 60)], null)).toBe('late')
  })
})
