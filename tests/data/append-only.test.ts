import { describe, expect, it } from 'vitest'
import { ask, ids } from '../support/guarded-club'

describe('what is written stays written', () => {
  it.each<[table: string, statement: () => string]>([
    ['TurnEvent', () => `update "TurnEvent" set "startSecond" = 1`],
    ['TurnEvent', () => `delete from "TurnEvent"`],
    ['TurnEvent', () => 'truncate "TurnEvent" cascade'],
    ['TurnSeat', () => `update "TurnSeat" set station = 1`],
    ['TurnSeat', () => 'delete from "TurnSeat"'],
    ['AuditEntry', () => `update "AuditEntry" set action = 'b'`],
    ['AuditEntry', () => 'delete from "AuditEntry"'],
    ['AuditEntry', () => 'truncate "AuditEntry"'],
    ['PolicyVersion', () => 'update "PolicyVersion" set "toleranceSeconds" = 0'],
    ['PolicyVersion', () => 'delete from "PolicyVersion"'],
    ['KeepsChange', () => `update "KeepsChange" set day = '2026-01-01'`],
    ['KeepsChange', () => 'delete from "KeepsChange"'],
    ['PitchEvent', () => 'update "PitchEvent" set seq = 2'],
    ['PitchEvent', () => 'delete from "PitchEvent"'],
    ['PitchEvent', () => 'truncate "PitchEvent"'],
    ['RegisterLine', () => 'delete from "RegisterLine"'],
    ['RegisterLine', () => 'truncate "RegisterLine"'],
    ['RegisterLine', () => 'update "RegisterLine" set "toSecond" = 50'],
    ['RegisterLine', () => 'update "RegisterLine" set "toSecond" = 50, "voidedAt" = now()'],
    [
      'RegisterLine',
      () => `update "RegisterLine" set "voidedAt" = now(); update "RegisterLine" set "voidedAt" = null`,
    ],
    [
      'RegisterLine',
      () => `update "RegisterLine" set "voidedAt" = now(); update "RegisterLine" set "voidedAt" = now()`,
    ],
    ['MatchSpell', () => 'delete from "MatchSpell"'],
    ['MatchSpell', () => `update "MatchSpell" set line = 'forward'`],
    [
      'MatchSpell',
      () => `update "MatchSpell" set "voidedAt" = now(); update "MatchSpell" set "voidedAt" = now()`,
    ],
  ])('in %s, even for the owner (%#)', async (table, statement) => {
    expect(await ask(statement())).toMatchObject({ code: '23001', constraint: `${table}_append_only` })
  })

  it('but a line or a spell can be voided, once', async () => {
    expect(await ask('update "RegisterLine" set "voidedAt" = now()')).toBeNull()
    expect(await ask(`update "MatchSpell" set "voidedAt" = now(), "voidedById" = '${ids.coach}'`)).toBeNull()
  })
})
