import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { ask, ids } from '../support/guarded-club'
import {
  away,
  block,
  calendarFeed,
  closedDays,
  ground,
  programmeEntry,
  session,
  termPlan,
  theme,
  themeDesign,
} from '../support/guarded-rows'

/** A text of JSON of more than so many bytes. */
const long = (bytes: number) => `{"a":"${'x'.repeat(bytes)}"}`

describe('what belongs to the weeks ahead is refused where it cannot be', () => {
  it.each<[what: string, constraint: string, statement: () => string]>([
    ['a focus that is a list', 'Theme_focus_check', () => theme({ focus: '[]' })],
    ['a focus of more than a kibibyte', 'Theme_focus_check', () => theme({ focus: long(1024) })],
    ['a first week before the first', 'ProgrammeEntry_weeks_check', () => programmeEntry({ firstWeek: 0 })],
    ['a last week before the first', 'ProgrammeEntry_weeks_check', () => programmeEntry({ lastWeek: 0 })],
    ['a sixty-first week', 'ProgrammeEntry_weeks_check', () => programmeEntry({ lastWeek: 61 })],
    ['a first week after every term', 'ProgrammeEntry_weeks_check', () => programmeEntry({ firstWeek: 61 })],
    [
      'weeks that end before they begin',
      'ProgrammeEntry_weeks_check',
      () => programmeEntry({ firstWeek: 5, lastWeek: 4 }),
    ],
    [
      'coming back after no week',
      'ProgrammeEntry_between_check',
      () => programmeEntry({ leastWeeksBetween: 0 }),
    ],
    [
      'coming back at the latest after 61 weeks',
      'ProgrammeEntry_between_check',
      () => programmeEntry({ mostWeeksBetween: 61 }),
    ],
    [
      'at the earliest later than at the latest',
      'ProgrammeEntry_between_check',
      () => programmeEntry({ leastWeeksBetween: 3, mostWeeksBetween: 2 }),
    ],
    [
      'a theme after itself',
      'ProgrammeEntry_after_check',
      () => programmeEntry({ afterThemeId: ids.childTheme }),
    ],
    [
      'a theme after one that no club has',
      'ProgrammeEntry_clubId_afterThemeId_fkey',
      () => programmeEntry({ afterThemeId: newId() }),
    ],
    ['a block before the first week', 'ProgrammeBlock_weeks_check', () => block({ firstWeek: 0 })],
    [
      'a block that ends before it begins',
      'ProgrammeBlock_weeks_check',
      () => block({ firstWeek: 3, lastWeek: 2 }),
    ],
    ['a block to week 61', 'ProgrammeBlock_weeks_check', () => block({ lastWeek: 61 })],
    [
      'a design that no club has',
      'ThemeDesign_clubId_designId_fkey',
      () => themeDesign({ designId: newId() }),
    ],
    [
      'closed days that end before they begin',
      'ClosedDays_days_check',
      () => closedDays({ firstDay: '2026-10-12', lastDay: '2026-10-11' }),
    ],
    ['closed days without a name', 'ClosedDays_name_check', () => closedDays({ name: '' })],
    ['closed days of 81 letters', 'ClosedDays_name_check', () => closedDays({ name: 'x'.repeat(81) })],
    [
      'closed days of a squad that no club has',
      'ClosedDays_clubId_squadId_fkey',
      () => closedDays({ squadId: newId() }),
    ],
    ['a ground without a name', 'GroundSize_text_check', () => ground({ place: '' })],
    ['a ground of 121 letters', 'GroundSize_text_check', () => ground({ place: 'x'.repeat(121) })],
    ['a ground without a length', 'GroundSize_size_check', () => ground({ lengthM: 0 })],
    ['a ground of 201 metres', 'GroundSize_size_check', () => ground({ widthM: 201 })],
    ['one ground of two sizes', 'GroundSize_pkey', () => `${ground({})}; ${ground({ lengthM: 50 })}`],
    [
      'days away that end before they begin',
      'PlayerAway_days_check',
      () => away({ firstDay: '2026-10-12', lastDay: '2026-10-11' }),
    ],
    [
      'days away of a player that no club has',
      'PlayerAway_clubId_playerId_fkey',
      () => away({ playerId: newId() }),
    ],
    ['a plan of no version', 'TermPlan_version_check', () => termPlan({ version: 0 })],
    ['a plan that is a list', 'TermPlan_plan_check', () => termPlan({ plan: '[]' })],
    ['a plan of more than 256 kibibytes', 'TermPlan_plan_check', () => termPlan({ plan: long(262144) })],
    ['two plans of one term', 'TermPlan_pkey', () => `${termPlan({})}; ${termPlan({ version: 2 })}`],
    ['a secret as it is', 'CalendarFeed_hash_check', () => calendarFeed({ secretHash: 'open sesame' })],
    [
      'a calendar of 101 squads',
      'CalendarFeed_squads_check',
      () => calendarFeed({ squadIds: `{${Array.from({ length: 101 }, newId).join()}}` }),
    ],
    ['a session of less than no revision', 'Session_revision_check', () => session({ revision: -1 })],
    [
      'a practice about a theme that no club has',
      'Session_clubId_themeId_fkey',
      () => session({ themeId: newId() }),
    ],
  ])('%s', async (_what, constraint, statement) => {
    expect(await ask(statement())).toMatchObject({ constraint })
  })

  it('and the same rows are taken where they can be', async () => {
    const good = [
      theme({ focus: '{"roles":["attack"]}' }),
      programmeEntry({}),
      programmeEntry({ firstWeek: 60, lastWeek: 60, leastWeeksBetween: 60, mostWeeksBetween: 60 }),
      programmeEntry({ firstWeek: 1, leastWeeksBetween: 1, afterThemeId: ids.theme }),
      programmeEntry({ lastWeek: 1, mostWeeksBetween: 1 }),
      block({ firstWeek: 1, lastWeek: 60 }),
      `${block({})}; ${block({})}`,
      closedDays({}),
      closedDays({ squadId: ids.squad, firstDay: '2026-10-12', lastDay: '2026-10-12', name: 'x'.repeat(80) }),
      ground({ place: 'x'.repeat(120), lengthM: 200, widthM: 0.5 }),
      away({}),
      away({ firstDay: '2026-10-12', lastDay: '2026-10-12' }),
      termPlan({}),
      calendarFeed({}),
      session({ themeId: ids.theme }),
    ]
    for (const statement of good) expect([statement, await ask(statement)]).toEqual([statement, null])
  })
})
