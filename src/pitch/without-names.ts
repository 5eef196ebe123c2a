/**
 * What was tapped without the words in it: whose name stands in a new face, what is said of a new plan. It can still be
 * sent; all else in it are places and ids.
 */
export function withoutNames<Event extends { readonly deed: { readonly kind: string } }>(
  event: Event,
): Event {
  const { deed } = event
  if (deed.kind === 'guest') return { ...event, deed: { ...deed, name: 'New face' } }
  if (deed.kind === 'replan') return { ...event, deed: { ...deed, sentence: '' } }
  return event
}
