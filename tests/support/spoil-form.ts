import fc from 'fast-check'
import { newId } from '#data/ids'

/** What a form can hold that no page sends. JSON has no undefined: that one takes the field away. */
const nasty = fc.oneof(
  fc.constantFrom<unknown>(
    ...[undefined, null, true, '', ' ', 0, -0, -1, 0.5, 1e308, -1e308, 2 ** 53, 2 ** 31, 'NaN', 'Infinity'],
    ...[
      '__proto__',
      'constructor',
      '\u0000',
      'a\u0000b',
      '\ud800',
      '\u202e\u200b',
      '<script>',
      '0x10',
      '1e3',
    ],
    ...['x'.repeat(5000), '9999-12-31', '0001-01-01', '2026-02-30', '24:00', newId(), [], {}, [[]], [null]],
    ...[{ toString: 1, valueOf: 1 }, { length: -1 }, '00000000-0000-0000-0000-000000000000'],
  ),
  fc.jsonValue({ maxDepth: 2 }),
)

type Spoiling = { readonly steps: readonly number[]; readonly value: unknown; readonly times: number }

/** Up to three places of a form, each to be replaced, added to, or multiplied. */
export const spoilings: fc.Arbitrary<readonly Spoiling[]> = fc.array(
  fc.record({
    steps: fc.array(fc.nat(1000), { minLength: 1, maxLength: 5 }),
    value: nasty,
    times: fc.constantFrom(0, 0, 0, 2, 600),
  }),
  { maxLength: 3 },
)

/** A form with some of its places spoilt. `times` above 0 and a list at the place: its first entry that often. */
export function spoilForm(form: object, places: readonly Spoiling[]): object {
  const spoilt = structuredClone(form)
  for (const place of places) spoilAt(spoilt, place)
  return spoilt
}

function spoilAt(form: object, { steps, value, times }: Spoiling): void {
  let parent = form as Record<string, unknown>
  for (const [at, step] of steps.entries()) {
    const keys = Object.keys(parent)
    const key = keys[step % (keys.length + 1)] ?? 'added'
    const child = parent[key]
    if (Array.isArray(child) && times > 0 && child.length > 0) {
      parent[key] = Array.from({ length: times }, () => child[0])
      return
    }
    if (at === steps.length - 1 || typeof child !== 'object' || child === null) {
      if (value === undefined) delete parent[key]
      else parent[key] = value
      return
    }
    parent = child as Record<string, unknown>
  }
}
