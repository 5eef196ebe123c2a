import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { ask, ids } from '../support/guarded-club'
import {
  adjustment,
  design,
  insert,
  keepsChange,
  membership,
  person,
  player,
  season,
  session,
  squad,
  squadCoach,
  term,
  theme,
} from '../support/guarded-rows'

describe('what frames a club’s book, when it cannot be, is refused', () => {
  it.each<[what: string, constraint: string, statement: () => string]>([
    ['a club without a time zone', 'Club_timeZone_check', () => `update "Club" set "timeZone" = ''`],
    ['a theme without a name', 'Theme_name_check', () => theme({ name: '' })],
    ['a theme that asks for a page', 'Theme_asks_check', () => theme({ asks: 'x'.repeat(301) })],
    ['an empty key of an imported theme', 'Theme_code_check', () => theme({ code: '' })],
    ['a season without a name', 'Season_name_check', () => `update "Season" set name = ''`],
    ['a term without a name', 'Term_name_check', () => `update "Term" set name = ' '`],
    ['a design without a name', 'PracticeDesign_name_check', () => design({ name: '' })],
    ['a note of a book’s length', 'PracticeDesign_note_check', () => design({ note: 'x'.repeat(2001) })],
    ['a title of 121 characters', 'Session_title_check', () => session({ title: 'x'.repeat(121) })],
    ['an empty key of an imported session', 'Session_code_check', () => session({ code: '' })],
    ['a person without a name', 'Person_name_check', () => person('')],
    ['a name of 81 characters', 'Person_name_check', () => person('x'.repeat(81))],
    ['a name with a space at its end', 'Person_name_check', () => person('Kit ')],
    ['a player without a name', 'Player_name_check', () => player({ name: '' })],
    ['an empty key of an imported player', 'Player_code_check', () => player({ code: '' })],
    ['a club name of 81 characters', 'Club_name_check', () => `update "Club" set name = repeat('x', 81)`],
    ['a language that is none', 'Club_locale_check', () => `update "Club" set locale = 'en GB'`],
    [
      'a real club whose calendar stands still',
      'Club_calendarDay_check',
      () => `update "Club" set "calendarDay" = now()`,
    ],
    ['a season that ends before it begins', 'Season_days_check', () => season('2028-02-01', '2028-01-31')],
    ['two seasons at one time', 'Season_one_at_a_time', () => season('2027-06-30', '2028-06-30')],
    ['a term that ends before it begins', 'Term_days_check', () => term('2026-09-02', '2026-09-01')],
    ['two terms at one time', 'Term_one_at_a_time', () => term('2026-12-31', '2027-01-01')],
    [
      'a term outside its season',
      'Term_inside_season',
      () => `delete from "Term"; ${term('2027-06-01', '2027-07-01')}`,
    ],
    [
      'a season that leaves its terms outside',
      'Term_inside_season',
      () => `update "Season" set "firstDay" = '2026-08-02'`,
    ],
    ['a squad of under-twos', 'Squad_ageLimit_check', () => squad({ ageLimit: 2 })],
    ['a squad without a name', 'Squad_name_check', () => squad({ name: '' })],
    [
      'a membership that ends before it begins',
      'SquadMembership_days_check',
      () => membership('2020-02-01', '2020-01-31'),
    ],
    [
      'two memberships at one time',
      'SquadMembership_one_at_a_time',
      () => membership('2020-01-01', '2026-08-01'),
    ],
    ['two open memberships', 'SquadMembership_one_at_a_time', () => membership('2030-01-01', null)],
    [
      'a coach’s line that ends before it begins',
      'SquadCoach_days_check',
      () => squadCoach('2020-02-01', '2020-01-31'),
    ],
    ['a coach twice at one time', 'SquadCoach_one_at_a_time', () => squadCoach('2026-09-01', null)],
    [
      'fewer turns without saying how many',
      'Adjustment_dueShare_check',
      () => adjustment({ dueShare: null }),
    ],
    ['a due share on another agreement', 'Adjustment_dueShare_check', () => adjustment({ kind: 'sameSide' })],
    ['a due share above one', 'Adjustment_dueShare_check', () => adjustment({ dueShare: 1.01 })],
    [
      'a first partner on another agreement',
      'Adjustment_partner_check',
      () => adjustment({ partnerId: ids.player }),
    ],
    [
      'a player as its own first partner',
      'Adjustment_partner_check',
      () => adjustment({ kind: 'sameFirstPartner', dueShare: null, partnerId: ids.player }),
    ],
    [
      'an agreement that ends before it begins',
      'Adjustment_days_check',
      () => adjustment({ lastDay: '2026-09-09' }),
    ],
    [
      'one agreement twice at one time',
      'Adjustment_one_at_a_time',
      () => `${adjustment({})}; ${adjustment({ firstDay: '2026-10-10' })}`,
    ],
    ['a change of who keeps without a place', 'KeepsChange_seq_check', () => keepsChange({ seq: 0 })],
    ['a change that changes nothing', 'KeepsChange_changes', () => keepsChange({ keeps: true })],
    [
      'a change to what a change before it has said',
      'KeepsChange_changes',
      () => `${keepsChange({})}; ${keepsChange({ seq: 2, day: '2026-09-11' })}`,
    ],
    [
      'a change, before the first, to what held then',
      'KeepsChange_changes',
      () => `${keepsChange({})}; ${keepsChange({ seq: 2, day: '2026-09-09', keeps: true })}`,
    ],
    ['a theme under itself', 'Theme_parent_check', () => `update "Theme" set "parentId" = id`],
    [
      'a theme under one of its own',
      'Theme_tree',
      () => `update "Theme" set "parentId" = '${ids.childTheme}' where id = '${ids.theme}'`,
    ],
    [
      'a wish above one',
      'ProgrammeEntry_wishedShare_check',
      () =>
        insert('ProgrammeEntry', {
          squadId: ids.squad,
          termId: ids.term,
          themeId: ids.theme,
          wishedShare: 1.5,
        }),
    ],
    ['a design without an area', 'PracticeDesign_area_check', () => design({ areaLengthM: 0 })],
    ['rounds that are no list', 'PracticeDesign_rounds_check', () => design({ rounds: '{}' })],
    ['a start at 24:00', 'Session_startsAt_check', () => session({ startsAt: '24:00' })],
    ['a start at 9:00', 'Session_startsAt_check', () => session({ startsAt: '9:00' })],
    ['a negative length', 'Session_lengthSeconds_check', () => session({ lengthSeconds: -1 })],
    ['a practice with periods', 'Session_periods_check', () => session({ periods: '[]' })],
    ['periods that are no list', 'Session_periods_check', () => session({ kind: 'match', periods: '{}' })],
    [
      'a match by a practice design',
      'Session_design_check',
      () => {
        const designId = newId()
        return `${design({ id: designId })}; ${session({ kind: 'match', designId })}`
      },
    ],
    ['written without a time', 'Session_written_check', () => session({ written: 'tapped' })],
    [
      'not written, but by somebody',
      'Session_written_check',
      () => session({ writtenById: ids.coach, writtenAt: 'now()' }),
    ],
    ['a session led by nobody there is', 'Session_clubId_ledById_fkey', () => session({ ledById: newId() })],
  ])('%s', async (_what, constraint, statement) => {
    expect(await ask(statement())).toMatchObject({ constraint })
  })
})
