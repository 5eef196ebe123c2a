import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { registrySource, wantedRegistry } from '../../../src/boot/flag-registry.mjs'

describe('the list of flag rules', () => {
  it('holds every rule of its folder: after adding one, `npm run generate` and commit it', () => {
    expect(readFileSync('src/fairness/flags/registry.ts', 'utf8')).toBe(wantedRegistry())
  })

  it('is sorted by file name, each rule under a name made from it', () => {
    expect(registrySource(['rest-over', 'attack-short'])).toBe(
      [
        "import type { FlagRule } from '#fairness/flags/flag-rule'",
        "import { rule as attackShort } from '#fairness/flags/rules/attack-short'",
        "import { rule as restOver } from '#fairness/flags/rules/rest-over'",
        '',
        '/** Every flag rule, by file name. Made by `npm run generate` from the files in rules/. */',
        'export const flagRules = [attackShort, restOver] as const satisfies readonly FlagRule[]',
        '',
      ].join('\n'),
    )
  })
})
