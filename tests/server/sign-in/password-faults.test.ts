import { describe, expect, it } from 'vitest'
import { passwordFault } from '#server/sign-in/password-faults'

const known = ['Una Brook', 'una.brook@example.org', 'Marl Lane Otters']

describe('a password', () => {
  // NIST SP 800-63B-4, 3.1.1.2: at least 15 characters where it is all there is, each Unicode code point one character.
  it('has 15 letters or more, however many bytes they take', () => {
    expect(passwordFault('ochre marl dyke', known)).toBeNull()
    expect(passwordFault('ochre marl dyk', known)).toMatch(/this one has 14/)
    expect(passwordFault('🦦🛶🪁🧵🪨🦉🥾🪺🧭🫖🪵🧦🪞🦔', known)).toMatch(/this one has 14/)
    expect(passwordFault('🦦🛶🪁🧵🪨🦉🥾🪺🧭🫖🪵🧦🪞🦔🐌', known)).toBeNull()
  })

  // OWASP ASVS 5.0, 6.2.9: at least 64 are permitted. 6.2.5: no rule about what it is made of.
  it('may have many letters, of one kind only, with spaces', () => {
    expect(
      passwordFault('heron quill marl ferry dusk ochre vane sedge tarn wold fen skerry', known),
    ).toBeNull()
    expect(passwordFault('h'.repeat(257), known)).toMatch(/256 letters at most/)
  })

  // ASVS 5.0, 6.2.4 and 6.2.11: common ones, and words of the place, are refused.
  it.each([
    'passwordpassword',
    'password1234567',
    '123456789012345',
    'qwertyuiopasdfgh',
    'aaaaaaaaaaaaaaaaaaaa',
    'abcdefghijklmnopq',
    'iloveyouiloveyou',
    'UnaBrookUnaBrook',
    'una.brook@example.org',
    'marllaneotters1',
  ])('is none that a guesser tries first: %s', (password) => {
    expect(passwordFault(password, known)).toMatch(/first that a guesser would try/)
  })
})
