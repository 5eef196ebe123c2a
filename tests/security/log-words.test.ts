import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { demand } from '#access/demand'
import { AppError } from '#common/app-error'
import { InvariantError } from '#common/result'
import { faultWords } from '#server/fault-words'
import { refusalWords } from '#server/log-refusal'
import { consoleWords, quietConsole } from '#server/quiet-console'

// What stands in logs must not be what was typed: OWASP Logging Cheat Sheet, "Data to exclude", from memory.
const typed = 'Wren Hollowbrook'

describe('a fault in the log', () => {
  it('is told by kind, code and place, without its message', () => {
    const thrown = Object.assign(new Error(`Key (name)=(${typed}) exists\n    at ${typed} (/x.js:1:1)`), {
      code: 'P2002',
    })
    const words = faultWords(thrown)
    expect(words).toMatchObject({ fault: 'Error', errorCode: 'P2002' })
    expect(words.frames?.[0]).toMatch(/^at .*log-words\.test\.ts/)
    expect(JSON.stringify(words)).not.toContain(typed)
  })

  it('keeps the messages that are our own or the language’s', () => {
    const broken = new InvariantError('7 turns, 8 seats')
    expect(faultWords(broken).message).toBe(broken.message)
    expect(faultWords(new TypeError('x is not a function')).message).toBe('x is not a function')
    // JSON.parse quotes what it was given.
    const parsing = (() => {
      try {
        return JSON.parse(`"${typed}`)
      } catch (error) {
        return error
      }
    })()
    expect(JSON.stringify(faultWords(parsing))).not.toContain('Wren')
  })

  it('never says a message in any form, whatever is thrown', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', minLength: 8 }),
        fc.constantFrom('message', 'code', 'name', 'thrown'),
        (text, where) => {
          fc.pre(!/^[\w.:/-]*$/.test(text))
          const thrown =
            where === 'thrown'
              ? text
              : Object.assign(
                  new Error(where === 'message' ? text : 'm'),
                  where === 'message' ? {} : { [where]: text },
                )
          return !JSON.stringify(faultWords(thrown)).includes(JSON.stringify(text).slice(1, -1))
        },
      ),
      { numRuns: 120 },
    )
  })
})

describe('a refusal in the log', () => {
  it('says who asked for what, by role, action and ids, and nothing that was typed', () => {
    const personId = '0199a3c1-7f00-7000-8000-00000000abcd'
    const viewer = { clubId: 'c', personId, name: typed, role: 'coach', squadIds: [], playerIds: [] } as const
    const asked = () => demand(viewer, 'seeSquad', { kind: 'squad', squadId: `${typed} may not x` })
    expect(asked).toThrow(AppError)
    const words = (() => {
      try {
        return asked()
      } catch (error) {
        return refusalWords(error as AppError)
      }
    })()
    expect(words).toEqual({ role: 'coach', action: 'seeSquad', ids: [personId] })
  })
})

describe('what packages print', () => {
  it.each([
    'Failed to handle request for /welcome?code=abcdef',
    'sent to parent.of@example.org',
    'code 3q2-7wAAbbccDDeeFF00112233445566778899',
    'cookie __Host-turnbook=eyJhbGciOiJIUzI1NiIsInR5cCI6IkpXVCJ9.abc',
  ])('is kept without what could be somebody’s: %s', (said) => {
    const { said: kept } = consoleWords([said, { password: 'hunter2hunter2' }])
    expect(kept).not.toMatch(/abcdef|parent\.of|7wAAbb|eyJhb|hunter2/)
    expect(String(kept).split(' ')[0]).toBe(said.split(' ')[0])
  })

  it('goes by one way, through every method that prints', () => {
    const own = { log: print, info: print, debug: print, warn: print, error: print }
    function print(): void {
      throw new Error('printed by itself')
    }
    quietConsole(own)
    expect(Object.values(own)).not.toContain(print)
  })
})
