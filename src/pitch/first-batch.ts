/**
 * The first of what waits to be sent: at most so many, and no longer together as JSON than so many characters, but one
 * at least. New plans are long: many of them in one batch would be refused as a whole, and with them all that waits.
 */
export function firstBatch<Event extends object>(
  waiting: readonly Event[],
  most: { readonly events: number; readonly letters: number },
): readonly Event[] {
  let letters = 0
  const end = waiting.findIndex((event, index) => {
    letters += JSON.stringify(event).length + 1
    return index >= most.events || (index > 0 && letters > most.letters)
  })
  return end < 0 ? waiting : waiting.slice(0, end)
}
