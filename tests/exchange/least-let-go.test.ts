import { describe, expect, it } from 'vitest'
import { leastLetGo } from '#exchange/least-let-go'

const hasTime = () => true

describe('the least that has to be let go', () => {
  it('works, and nothing of it can be taken back', () => {
    // Every set of sets of three things: what works are those with all of one of them.
    for (let each = 1; each < 2 ** 8; each++) {
      const enough = Array.from({ length: 8 }, (_, set) => set).filter((set) => each & (1 << set))
      const works = (letGo: readonly number[]) =>
        enough.some((set) => [0, 1, 2].every((one) => !(set & (1 << one)) || letGo.includes(one)))
      const least = leastLetGo([0, 1, 2], { works, hasTime })
      if (enough.includes(0)) expect(least).toBeNull()
      else {
        expect(works(least ?? [])).toBe(true)
        for (const one of least ?? []) expect(works((least ?? []).filter((own) => own !== one))).toBe(false)
      }
    }
  })

  it('takes back what stands first where the one or the other would do', () => {
    const works = (letGo: readonly string[]) => letGo.length > 0
    expect(leastLetGo(['dear', 'less', 'cheap'], { works, hasTime })).toEqual(['cheap'])
  })

  it('is all of it where there is no time, and none where nothing helps', () => {
    const works = () => true
    expect(leastLetGo(['one', 'other'], { works, hasTime: () => false })).toEqual(['one', 'other'])
    expect(leastLetGo([], { works, hasTime })).toBeNull()
    expect(leastLetGo(['one'], { works: () => false, hasTime })).toBeNull()
  })
})
